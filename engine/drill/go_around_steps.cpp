#include "drill/go_around_steps.h"

#include <algorithm>
#include <cmath>

#include "base/units.h"

namespace slopewise {
namespace {

constexpr double climbing_mps = mps_from_fpm(100.0);
constexpr double lever_meant = 0.1, trim_moved = 0.01;  // shares of travel
constexpr double stages_apart_s = 3.0;

void note(double& step_s, bool is, double since_s) {
    if (is && step_s < 0.0) step_s = since_s;
}

void watch_flap(TrackPoints points, std::size_t i, double since_s, GoAroundSteps& steps) {
    const int raised = points[i - 1].flap_setting - points[i].flap_setting;
    if (raised <= 0) return;
    note(steps.flap_s, true, since_s);
    steps.flap_stages += raised;
    steps.flap_sinking |= points[i].sink_mps > 0.0;
    for (std::size_t j = i; j-- > 0 && points[i].time_s - points[j].time_s <= stages_apart_s;)
        steps.flap_all_at_once |= points[j].flap_setting - points[i].flap_setting > 1;
}

// The points from the call on. What the trim did before the climb is not this step.
void watch(TrackPoints points, double call_s, GoAroundSteps& steps) {
    double trim_before = points.front().trim;
    for (std::size_t i = 0; i < points.size(); ++i) {
        const TrackPoint& p = points[i];
        const double since_s = p.time_s - call_s;
        note(steps.begun_s, p.go_around_said || p.lever >= points.front().lever + lever_meant, since_s);
        note(steps.power_s, p.lever >= full_power_lever, since_s);
        note(steps.climb_s, p.sink_mps <= -climbing_mps, since_s);
        if (i > 0) watch_flap(points, i, since_s, steps);
        if (steps.flap_s < 0.0 && steps.climb_s < 0.0) trim_before = p.trim;
        note(steps.trim_s, std::abs(p.trim - trim_before) >= trim_moved, since_s);
    }
}

int steps_in_order(const GoAroundSteps& steps) {
    int in_order = 0;
    double before_s = 0.0;
    for (const double step_s : {steps.power_s, steps.climb_s, steps.flap_s, steps.trim_s}) {
        if (step_s < before_s) break;
        before_s = step_s;
        ++in_order;
    }
    return in_order;
}

}  // namespace

GoAroundSteps go_around_steps(const Track& track, End end, double call_s) {
    GoAroundSteps steps;
    steps.figures = go_around_of(track, end);
    if (!steps.figures.flown || track.points[steps.figures.point].time_s < call_s) return steps;
    const auto called =
        std::ranges::find_if(track.points, [&](const TrackPoint& point) { return point.time_s >= call_s; });
    watch({called, track.points.end()}, call_s, steps);
    steps.in_order = steps_in_order(steps);
    return steps;
}

std::vector<Figure> go_around_drill_figures(const Scenario& scenario, const Track& track, End end,
                                            double call_s) {
    const GoAroundSteps steps = go_around_steps(track, end, call_s);
    if (steps.begun_s < 0.0) return {};
    std::vector<Figure> figures{{Measure::decision_s, steps.begun_s}};
    if (steps.power_s >= 0.0) figures.push_back({Measure::full_power_s, steps.power_s - steps.begun_s});
    if (steps.climb_s >= 0.0) figures.push_back({Measure::climb_s, steps.climb_s});
    const double slow_mps = scenario.lesson.target_cas_mps - steps.figures.slowest_mps;
    const int out_of_turn = steps.flap_sinking + steps.flap_all_at_once;
    figures.push_back({Measure::pitch_deg, deg_from_rad(steps.figures.most_pitch_rad)});
    figures.push_back({Measure::slow_kt, std::max(0.0, kt_from_mps(slow_mps))});
    figures.push_back({Measure::flap_stages, static_cast<double>(steps.flap_stages)});
    figures.push_back({Measure::flap_out_of_turn, static_cast<double>(out_of_turn)});
    figures.push_back({Measure::steps_in_order, static_cast<double>(steps.in_order)});
    return figures;
}

}  // namespace slopewise
