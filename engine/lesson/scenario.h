// Everything about one flight that does not move: the lesson with its aircraft, runway and lights in
// hand, and the trimmed state it starts from. Made once, const while flown.
#pragma once

#include "flight/trim.h"
#include "lesson/lesson.h"
#include "world/lights.h"

namespace slopewise {

struct Scenario {
    Lesson lesson;
    Aircraft aircraft;
    Surroundings surroundings;
    LightSystem lights;
    TrimState start_trim;  // check `flyable` before flying
    FlightState start_state;
};

Scenario make_scenario(const Lesson& lesson, const Aircraft& aircraft, const Runway& runway);

// The flap setting that this lesson lands with.
int briefed_flap(const Scenario& scenario);

// Steady flight down the nominal path at the target speed with the briefed flap, at a height above the
// threshold (m): the briefing's power and pitch, and the sink reference.
TrimState reference_trim(const Scenario& scenario, double height_m);

}  // namespace slopewise
