#include "lesson/briefing.h"

#include "base/units.h"
#include "world/sight.h"

namespace slopewise {

Briefing make_briefing(const Scenario& scenario) {
    const Runway& runway = scenario.surroundings.runway;
    const Point3 aim = aim_point(runway);
    const Point3 start_eye = eye_position(scenario.aircraft, scenario.start_state);
    const double middle_m = scenario.lesson.start.distance_m / 2.0;
    const double middle_height_m = path_height_m(runway, middle_m);
    const TrimState steady = reference_trim(scenario, middle_height_m);

    Briefing briefing;
    briefing.flyable = steady.flyable && scenario.start_trim.flyable;
    briefing.reason = scenario.start_trim.flyable ? steady.reason : scenario.start_trim.reason;
    briefing.target_cas_mps = scenario.lesson.target_cas_mps;
    briefing.ground_speed_mps = steady.ground_speed_mps;
    briefing.sink_mps = steady.sink_mps;
    briefing.power = steady.power;
    briefing.lever = steady.controls.throttle;
    briefing.pitch_rad = steady.pitch_rad;
    briefing.headwind_mps = headwind_at_mps(scenario.surroundings.wind, middle_height_m);
    briefing.flap = briefed_flap(scenario);
    const PathDeviation start = path_deviation(runway, start_eye);
    briefing.start_offset_rad = start.angle_rad;
    briefing.start_height_m = start.height_m;
    briefing.white_on_path =
        white_count(scenario.lights, {aim.x_m - middle_m, 0.0, aim.z_m + middle_height_m});
    briefing.white_at_start = white_count(scenario.lights, start_eye);
    constexpr std::array<double, 4> distances_nm{3.0, 2.0, 1.0, 0.5};
    for (std::size_t i = 0; i < distances_nm.size(); ++i) {
        const double distance_m = m_from_nm(distances_nm[i]);
        briefing.heights[i] = {distance_m, path_height_m(runway, distance_m)};
    }
    return briefing;
}

}  // namespace slopewise
