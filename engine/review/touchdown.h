// Where the approach would have met the runway, had it gone on straight: shown, never scored.
#pragma once

#include "review/deviations.h"

namespace slopewise {

struct Touchdown {
    bool known = false;             // the approach came down to 50 ft
    double from_threshold_m = 0.0;  // of the wheels, straight on with no flare
    double from_aim_m = 0.0;        // beyond the aim point
    double float_least_m = 0.0,
           float_most_m = 0.0;               // with a usual flare, estimated: between these, the same way
    double sink_mps = 0.0, speed_mps = 0.0;  // at 50 ft; speed less target
};

// What a usual flare adds: common practice, no source; an estimate, and labelled so.
inline constexpr double usual_float_least_m = 60.0, usual_float_most_m = 200.0;

// By the values where scoring ended; the wheels are taken to be straight below the eye.
Touchdown touchdown_of(const Scenario& scenario, TrackPoints points, End end);

}  // namespace slopewise
