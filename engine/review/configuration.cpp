#include "review/configuration.h"

#include <algorithm>
#include <cmath>

#include "flight/aircraft.h"

namespace slopewise {
namespace {

constexpr double trim_moved = 0.01;
constexpr double speed_lost_within_s = 10.0;
constexpr double rounding_s = 1e-6;

double limit_mps(const Scenario& scenario, int setting) {
    return scenario.aircraft.flaps[static_cast<std::size_t>(setting)].max_speed_mps;
}

FlapStep step_at(const Scenario& scenario, TrackPoints points, std::size_t at) {
    FlapStep step;
    step.point = at;
    step.from = points[at - 1].flap_setting;
    step.to = points[at].flap_setting;
    step.speed_mps = points[at].cas_mps;
    step.too_fast = step.speed_mps > limit_mps(scenario, step.to);
    for (std::size_t i = at; i < points.size(); ++i) {
        const double elapsed_s = points[i].time_s - points[at].time_s;
        if (elapsed_s <= balloon_s + rounding_s)
            step.balloon_m = std::max(step.balloon_m, points[i].path_offset_m - points[at].path_offset_m);
        if (elapsed_s <= speed_lost_within_s + rounding_s)
            step.speed_lost_mps = std::max(step.speed_lost_mps, step.speed_mps - points[i].cas_mps);
        const bool moved = std::abs(points[i].trim - points[at - 1].trim) >= trim_moved;
        if (step.retrim_s < 0.0 && moved && elapsed_s <= retrim_within_s + rounding_s)
            step.retrim_s = elapsed_s;
    }
    return step;
}

}  // namespace

Configuration configuration_of(const Scenario& scenario, TrackPoints points) {
    Configuration result;
    result.landing_setting = briefed_flap(scenario);
    result.landing_at_start = points.front().flap_setting == result.landing_setting;
    if (result.landing_at_start) result.landing_height_m = points.front().wheel_height_m;
    double stick = 0.0, sticks = 0.0;
    for (std::size_t i = 0; i < points.size(); ++i) {
        const TrackPoint& p = points[i];
        if (points.back().time_s - p.time_s <= held_over_s + rounding_s) stick += p.stick, sticks += 1.0;
        if (i == 0) continue;
        const int out = static_cast<int>(std::ceil(p.flap_position - 0.5));
        if (out > 0 && p.cas_mps > limit_mps(scenario, out))
            result.over_flap_speed_s += p.time_s - points[i - 1].time_s;
        if (p.flap_setting == points[i - 1].flap_setting) continue;
        result.steps.push_back(step_at(scenario, points, i));
        const bool landing = p.flap_setting == result.landing_setting;
        result.landing_height_m = landing ? p.wheel_height_m : -1.0;
    }
    result.held_stick = stick / sticks;
    return result;
}

}  // namespace slopewise
