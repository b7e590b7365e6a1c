// A go-around at a call: its steps, when each was done and whether in order.
#pragma once

#include <vector>

#include "drill/drill.h"
#include "review/go_around.h"

namespace slopewise {

struct GoAroundSteps {
    // Since the call; -1: never.
    double begun_s = -1.0;      // said, or the lever moved up by a tenth of its travel
    double power_s = -1.0;      // the lever at 95 % or more
    double climb_s = -1.0;      // climbing by 100 ft/min or more
    double flap_s = -1.0;       // first raised
    double trim_s = -1.0;       // the trim moved by 0.01 of its travel, once climbing or with flap coming up
    int flap_stages = 0;        // settings raised
    bool flap_sinking = false;  // one of them while still sinking
    bool flap_all_at_once = false;  // more than one within three seconds
    int in_order = 0;               // of power, climb, flap, trim: done, and none later than the one after it
    GoAroundFigures figures;        // of the whole go-around, as the review has them
};

// Of the whole track, the call at `call_s`. All never where it was not flown, or begun before the call.
GoAroundSteps go_around_steps(const Track& track, End end, double call_s);

// decision_s, full_power_s (since it was begun), climb_s, pitch_deg, slow_kt, flap_stages, flap_out_of_turn,
// steps_in_order. Those of steps that were not done are left out.
std::vector<Figure> go_around_drill_figures(const Scenario& scenario, const Track& track, End end,
                                            double call_s);

}  // namespace slopewise
