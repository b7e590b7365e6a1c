#include "handout/handout_numbers.h"

#include <algorithm>

#include "base/exact_math.h"
#include "base/units.h"
#include "flight/performance.h"
#include "lesson/approach_choice.h"
#include "lesson/briefing.h"
#include "world/sight.h"

namespace slopewise {
namespace {

// As the briefing of a free approach in that wind has it.
HandoutWind in_headwind(const Scenario& base, double headwind_kt) {
    const Lesson lesson = lesson_of({3, StartSide::on, headwind_kt}, base.lesson);
    const Briefing briefing = make_briefing(make_scenario(lesson, base.aircraft, base.surroundings.runway));
    return {mps_from_kt(headwind_kt), briefing.flyable, briefing.ground_speed_mps,
            briefing.sink_mps,        briefing.power,   briefing.pitch_rad};
}

std::vector<HandoutLights> light_pictures(const LightSystem& lights) {
    std::vector<double> settings_rad;
    for (int i = 0; i < lights.pattern; ++i)
        settings_rad.push_back(lights.units[static_cast<std::size_t>(i)].setting_rad);
    std::ranges::stable_sort(settings_rad);
    std::vector<HandoutLights> pictures;
    for (int white = lights.pattern; white >= 0; --white) {
        const auto at = static_cast<std::size_t>(white);
        pictures.push_back({white, lights.pattern, white > 0 ? settings_rad[at - 1] : 0.0,
                            at < settings_rad.size() ? settings_rad[at] : 0.0});
    }
    return pictures;
}

}  // namespace

HandoutNumbers handout_numbers(const Scenario& base, const School& school) {
    const Runway& runway = base.surroundings.runway;
    const Aircraft& aircraft = base.aircraft;
    HandoutNumbers numbers;
    numbers.target_mps = base.lesson.target_cas_mps;
    numbers.stall_mps = stall_speed_mps(aircraft, landing_flap(aircraft));
    numbers.path_rad = runway.lights.nominal_path_rad;
    numbers.wheels_below_eye_m = aircraft.geometry.eye_up_m + aircraft.geometry.wheels_down_m;
    numbers.go_around_climb_mps = performance_of(aircraft, base.surroundings).go_around_climb_mps;
    for (std::size_t i = 0; i < numbers.winds.size(); ++i) {
        const double knots = 5.0 * static_cast<double>(i);
        numbers.winds[i] = in_headwind(base, knots);
        numbers.gusts[i] = {mps_from_kt(knots), numbers.target_mps + school.gust_share * mps_from_kt(knots)};
    }
    constexpr std::array<double, 4> distances_nm{3.0, 2.0, 1.0, 0.5};
    for (std::size_t i = 0; i < distances_nm.size(); ++i) {
        const double distance_m = m_from_nm(distances_nm[i]);
        const double height_m = path_height_m(runway, distance_m);
        const double above_m = distance_m * exact::tan(numbers.path_rad + rad_from_deg(0.5));
        numbers.heights[i] = {distance_m, height_m, above_m - height_m};
    }
    numbers.lights = light_pictures(base.lights);
    return numbers;
}

}  // namespace slopewise
