// Where the energy was: high or low, fast or slow.
#pragma once

#include <array>
#include <string_view>

#include "review/deviations.h"

namespace slopewise {

// The centre is path and speed both in tolerance; else the quadrant of the two signs.
enum class Quadrant { centre, high_fast, high_slow, low_fast, low_slow };
inline constexpr std::array<std::string_view, 5> quadrant_names{"centre", "high_fast", "high_slow",
                                                                "low_fast", "low_slow"};
Quadrant quadrant_of(const Deviations& off);

struct Energy {
    std::array<double, quadrant_names.size()> share{};  // of the points
    double low_and_slow_s = 0.0;  // both out of tolerance, the time from one point to the next
};

Energy energy_of(const Scenario& scenario, TrackPoints points);

}  // namespace slopewise
