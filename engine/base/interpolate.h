// Small arithmetic used everywhere: linear blends and limits.
#pragma once

namespace slopewise {

constexpr double lerp(double a, double b, double fraction) { return a + (b - a) * fraction; }

constexpr double clamp(double value, double low, double high) {
    return value < low ? low : (value > high ? high : value);
}

// 0 at or below `low`, 1 at or above `high`, smooth (continuous slope) between.
constexpr double smooth_step(double value, double low, double high) {
    const double t = clamp((value - low) / (high - low), 0.0, 1.0);
    return t * t * (3.0 - 2.0 * t);
}

constexpr double square(double x) { return x * x; }

}  // namespace slopewise
