#include "progress/trend.h"

#include <algorithm>

namespace slopewise {

double median_of(std::vector<double> values) {
    std::ranges::make_heap(values);
    std::ranges::sort_heap(values);
    const std::size_t middle = values.size() / 2;
    return values.size() % 2 == 1 ? values[middle] : (values[middle - 1] + values[middle]) / 2.0;
}

std::vector<double> rolling_median(std::span<const double> values, const std::vector<bool>& breaks) {
    std::vector<double> medians;
    std::size_t first = 0;
    for (std::size_t i = 0; i < values.size(); ++i) {
        if (!breaks.empty() && breaks[i]) first = i;
        if (i + 1 - first > median_window) first = i + 1 - median_window;
        medians.push_back(median_of({values.begin() + static_cast<std::ptrdiff_t>(first),
                                     values.begin() + static_cast<std::ptrdiff_t>(i + 1)}));
    }
    return medians;
}

}  // namespace slopewise
