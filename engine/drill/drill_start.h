// Where a drill's flight begins, in terms that fit any aeroplane and runway.
#pragma once

#include "lesson/scenario.h"

namespace slopewise {

struct DrillStart {
    double distance_m = 0.0;   // along the ground from the eye to the aim point
    double offset_rad = 0.0;   // of the eye from the nominal path, positive high
    double steeper_rad = 0.0;  // of the flight than the line from the eye to the aim point
    double faster_mps = 0.0;   // than the target
    int flap_short = 0;        // settings short of landing flap
    double headwind_mps = 0.0;
};

// The base scenario flown from there, in smooth air with that steady wind and nothing failing. Check
// `start_trim.flyable`.
Scenario scenario_from(const DrillStart& start, const Scenario& base);

}  // namespace slopewise
