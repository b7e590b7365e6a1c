// The figures a pilot takes along: what speed, power, pitch and sink to expect, and where the path is.
#pragma once

#include <array>
#include <string>

#include "lesson/scenario.h"

namespace slopewise {

struct Briefing {
    bool flyable = false;
    std::string reason;  // why not; empty when flyable

    // Steady on the nominal path at target speed with landing flap, in the middle of the approach.
    double target_cas_mps = 0.0;
    double ground_speed_mps = 0.0;
    double sink_mps = 0.0;  // positive down
    double power = 0.0;     // fraction of what the engine can give here
    double lever = 0.0;     // throttle lever, 0 to 1
    double pitch_rad = 0.0;
    double headwind_mps = 0.0;  // there
    int flap = 0;               // landing setting

    double start_offset_rad = 0.0;  // of the eye from the path, positive high
    double start_height_m = 0.0;    // of the eye above the aim point
    int white_on_path = -1;         // units seen white with the eye on the path, in mid approach
    int white_at_start = -1;

    struct PathHeight {
        double distance_m;  // to the aim point along the ground
        double height_m;    // of the eye above the aim point on the nominal path
    };
    std::array<PathHeight, 4> heights{};  // at 3, 2, 1 and 0.5 NM
};

Briefing make_briefing(const Scenario& scenario);

}  // namespace slopewise
