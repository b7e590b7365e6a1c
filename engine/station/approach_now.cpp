#include "station/approach_now.h"

#include "base/interpolate.h"
#include "review/track.h"

namespace slopewise {

Start start_as_it_is(const Scenario& scenario, const Attempt& attempt) {
    if (attempt.tick == 0) return scenario.lesson.start;
    const TrackPoint now = observe(scenario, attempt);
    Start start;
    start.distance_m = now.distance_m;
    start.offset_rad = now.path_error_rad;
    start.path_rad = -scenario.surroundings.runway.lights.nominal_path_rad;
    start.cas_mps = now.cas_mps;
    start.flap = now.flap_setting;
    return start;
}

Start start_now(const Scenario& scenario, const Attempt& attempt, const Start& began) {
    Start start = start_as_it_is(scenario, attempt);
    if (attempt.on_ground || start.distance_m < nearest_start_m) return began;
    const double nominal_rad = scenario.surroundings.runway.lights.nominal_path_rad;
    start.offset_rad = clamp(start.offset_rad, least_elevation_rad - nominal_rad, most_high_rad);
    return start;
}

Lesson approach_now(const Scenario& scenario, const Attempt& attempt, const Start& began) {
    Lesson lesson = scenario.lesson;
    lesson.start = start_now(scenario, attempt, began);
    lesson.hands = Hands::both;
    for (std::size_t i = 0; i < static_cast<std::size_t>(lesson.failure_count); ++i) {
        if (!attempt.conditions.failed[i]) continue;
        lesson.failures[i].trigger = Failure::Trigger::time;
        lesson.failures[i].at = 0.0;
    }
    return lesson;
}

}  // namespace slopewise
