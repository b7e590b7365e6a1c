#include "station/calm_beside.h"

#include <algorithm>

#include "base/interpolate.h"

namespace slopewise {
namespace {

constexpr std::size_t roomy_points = 6000;  // ten minutes

Lesson without_wind(Lesson lesson) {
    lesson.wind = Wind{};
    lesson.turbulence_w20_mps = 0.0;
    lesson.air_event_count = 0;
    return lesson;
}

void keep_point(CalmBeside& calm) {
    const TrackPoint now = observe(calm.scenario, calm.attempt);
    calm.flown.push_back({now.time_s, now.distance_m, now.eye_height_m, now.path_offset_m, now.cas_mps});
}

// At a distance nearer than `a` and no nearer than `b`, which are never at the same one for that.
CalmPoint between(const CalmPoint& a, const CalmPoint& b, double distance_m) {
    const double share = (a.distance_m - distance_m) / (a.distance_m - b.distance_m);
    return {lerp(a.time_s, b.time_s, share), distance_m, lerp(a.eye_height_m, b.eye_height_m, share),
            lerp(a.offset_m, b.offset_m, share), lerp(a.cas_mps, b.cas_mps, share)};
}

}  // namespace

CalmBeside begin_calm_beside(const Scenario& scenario) {
    CalmBeside calm;
    const Scenario& windy = scenario;
    calm.scenario = windy;
    calm.scenario.lesson = without_wind(windy.lesson);
    calm.scenario.surroundings.wind = Wind{};
    // The same motion through the air: over the ground it is faster by the headwind. Trimmed as it is, it
    // stays so, and needs no hand that the other did not need.
    calm.scenario.start_state.vx_mps +=
        air_motion_at(windy.aircraft, windy.surroundings, windy.start_state, Gust{}).headwind_mps;
    calm.attempt = begin_attempt(calm.scenario);
    calm.controls = calm.attempt.controls;
    calm.flown.reserve(roomy_points);
    keep_point(calm);
    return calm;
}

void catch_up(CalmBeside& calm, const Recording& recording) {
    Attempt& attempt = calm.attempt;
    const double far_end_m = calm.scenario.surroundings.runway.length_m;
    while (!calm.over && attempt.tick < recording.ticks) {
        if (calm.next_change < recording.changes.size() &&
            recording.changes[calm.next_change].tick == attempt.tick)
            calm.controls = recording.changes[calm.next_change++].controls;
        tick(calm.scenario, attempt, calm.controls);
        calm.over = attempt.on_ground || attempt.flight.x_m > far_end_m;
        if (attempt.tick % track_interval_ticks == 0 || calm.over) keep_point(calm);
    }
}

CalmDifference calm_difference(const CalmBeside& calm, const TrackPoint& now) {
    CalmDifference difference;
    const std::vector<CalmPoint>& flown = calm.flown;
    const auto there = std::lower_bound(
        flown.begin(), flown.end(), now.distance_m,
        [](const CalmPoint& point, double distance_m) { return point.distance_m > distance_m; });
    if (there == flown.end()) {
        const CalmPoint& last = flown.back();
        difference.came_down = calm.attempt.on_ground;
        difference.short_of_m = last.distance_m;
        if (difference.came_down) return difference;
        difference.higher_m = last.offset_m - now.path_offset_m;
        difference.faster_mps = last.cas_mps - now.cas_mps;
        return difference;
    }
    const CalmPoint at = there == flown.begin() ? *there : between(*(there - 1), *there, now.distance_m);
    difference.was_there = true;
    difference.higher_m = at.eye_height_m - now.eye_height_m;
    difference.faster_mps = at.cas_mps - now.cas_mps;
    difference.earlier_s = now.time_s - at.time_s;
    return difference;
}

}  // namespace slopewise
