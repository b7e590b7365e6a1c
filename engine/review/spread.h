// Statistics of a row of values: constant and variable error, and the slope.
#pragma once

#include <span>

namespace slopewise {

// Constant and variable error: rms^2 = bias^2 + scatter^2 (population standard deviation).
struct Spread {
    double bias = 0.0, scatter = 0.0, rms = 0.0;
};

// All zero for no values.
Spread spread_of(std::span<const double> values);

// Slope of the straight line of least squares through values over their times, per second; 0 for fewer
// than two or for times that are all the same. Both have the same length.
double slope_of(std::span<const double> times_s, std::span<const double> values);

}  // namespace slopewise
