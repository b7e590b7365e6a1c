// The trend over attempts: rolling medians, which one bad run does not throw.
#pragma once

#include <span>
#include <vector>

namespace slopewise {

inline constexpr std::size_t median_window = 5;

// After each value, the median of it and up to four before; of an even number the mean of the middle two.
// A break (true at the first value after one) begins afresh; `breaks` is empty or as long as the values.
std::vector<double> rolling_median(std::span<const double> values, const std::vector<bool>& breaks);

double median_of(std::vector<double> values);

}  // namespace slopewise
