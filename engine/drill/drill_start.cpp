#include "drill/drill_start.h"

#include <algorithm>

namespace slopewise {

Scenario scenario_from(const DrillStart& start, const Scenario& base) {
    Lesson lesson = base.lesson;
    const double nominal_rad = base.surroundings.runway.lights.nominal_path_rad;
    lesson.start.distance_m = start.distance_m;
    lesson.start.offset_rad = start.offset_rad;
    lesson.start.path_rad = -(nominal_rad + start.offset_rad + start.steeper_rad);
    lesson.start.cas_mps = lesson.target_cas_mps + start.faster_mps;
    lesson.start.flap = std::max(0, landing_flap(base.aircraft) - start.flap_short);
    lesson.wind = Wind{};
    lesson.wind.headwind_mps = start.headwind_mps;
    lesson.turbulence_w20_mps = 0.0;
    lesson.air_event_count = 0;
    lesson.failure_count = 0;
    return make_scenario(lesson, base.aircraft, base.surroundings.runway);
}

}  // namespace slopewise
