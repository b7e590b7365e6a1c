// How busy the hands were.
#pragma once

#include <span>
#include <vector>

#include "review/deviations.h"

namespace slopewise {

// A movement counts when it goes back by more than this share of the travel: of the stick three times the
// tremor of a steady hand; of the lever less than any step meant.
inline constexpr double stick_reversal = 0.03;
inline constexpr double lever_reversal = 0.02;

// The indices at which a row of values has turned back by more than `least` from its last extreme. The first
// movement away from the beginning is none.
std::vector<std::size_t> reversals(std::span<const double> values, double least);

struct ControlActivity {
    double time_s = 0.0;
    int stick_reversals = 0, lever_reversals = 0;
    double stick_rate_rms_per_s = 0.0;  // shares of travel a second
    double largest_lever_step = 0.0;    // within two seconds
    double pitch_scatter_rad = 0.0;

    double stick_reversals_per_min() const { return time_s > 0.0 ? 60.0 * stick_reversals / time_s : 0.0; }
    double lever_reversals_per_min() const { return time_s > 0.0 ? 60.0 * lever_reversals / time_s : 0.0; }
};

// Of the points whose place in `counts` is true (as many as points); a reversal belongs to the point at which
// it has become one, a rate to the later of its two points.
ControlActivity control_activity(TrackPoints points, const std::vector<bool>& counts);

}  // namespace slopewise
