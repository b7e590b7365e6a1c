#include "drill/speed_hold.h"

#include <algorithm>
#include <cmath>

#include "base/units.h"
#include "drill/drill_words.h"
#include "review/configuration.h"

namespace slopewise {
namespace {

using Task = SpeedHoldState::Task;

constexpr double bump_within_s = 6.0, led_s = 5.0;  // of a step; the straight line before it
constexpr double rounding_s = 1e-6;

double off_mps(const Scenario& scenario, double cas_mps) {
    return std::abs(cas_mps - scenario.lesson.target_cas_mps);
}

// The points from a step to the next one, or to the end.
TrackPoints after_step(TrackPoints points, const Configuration& configuration, std::size_t step) {
    const std::size_t from = configuration.steps[step].point;
    const std::size_t to =
        step + 1 < configuration.steps.size() ? configuration.steps[step + 1].point : points.size();
    return points.subspan(from, to - from);
}

// The longest stretch of points for which `is`, in seconds; `each(first, last)` sees every stretch.
template <class Is, class Each>
void stretches(TrackPoints points, Is&& is, Each&& each) {
    for (std::size_t i = 0; i < points.size(); ++i) {
        if (!is(points[i])) continue;
        std::size_t last = i;
        while (last + 1 < points.size() && is(points[last + 1])) ++last;
        each(i, last);
        i = last;
    }
}

double held_s(const SpeedHold& settings, const Scenario& scenario, TrackPoints points) {
    double longest_s = 0.0;
    stretches(
        points, [&](const TrackPoint& p) { return off_mps(scenario, p.cas_mps) <= settings.band_mps; },
        [&](std::size_t first, std::size_t last) {
            longest_s = std::max(longest_s, points[last].time_s - points[first].time_s);
        });
    return longest_s;
}

// A step is never the first point, so that some time led up to it.
double bump_m(TrackPoints points, std::size_t step) {
    std::size_t before = step;
    while (before > 0 && points[step].time_s - points[before].time_s < led_s - rounding_s) --before;
    const double span_s = points[step].time_s - points[before].time_s;
    const double climb_mps = (points[step].eye_height_m - points[before].eye_height_m) / span_s;
    double most_m = 0.0;
    for (std::size_t i = step; i < points.size(); ++i) {
        const double since_s = points[i].time_s - points[step].time_s;
        if (since_s > bump_within_s + rounding_s) break;
        most_m = std::max(most_m, points[i].eye_height_m - points[step].eye_height_m - climb_mps * since_s);
    }
    return most_m;
}

// The least change of speed in a stretch hands off that is long enough; negative: there is none.
double hands_off_change_mps(const SpeedHold& settings, TrackPoints points) {
    double least_mps = -1.0;
    stretches(
        points, [](const TrackPoint& p) { return std::abs(p.stick) <= hands_off_stick; },
        [&](std::size_t first, std::size_t last) {
            // The first window long enough from each point of the stretch.
            for (std::size_t i = first, j = first; i <= last; ++i) {
                while (j < last && points[j].time_s - points[i].time_s < settings.hands_off_s - rounding_s)
                    ++j;
                if (points[j].time_s - points[i].time_s < settings.hands_off_s - rounding_s) break;
                double low = points[i].cas_mps, high = low;
                for (std::size_t k = i; k <= j; ++k) {
                    low = std::min(low, points[k].cas_mps);
                    high = std::max(high, points[k].cas_mps);
                }
                if (least_mps < 0.0 || high - low < least_mps) least_mps = high - low;
            }
        });
    return least_mps;
}

}  // namespace

void advance(SpeedHoldState& state, const SpeedHold& settings, const Scenario& scenario,
             const Attempt& attempt) {
    const TrackPoint now = observe(scenario, attempt);
    const bool moving = std::abs(attempt.flight.flap - now.flap_setting) > 0.01;
    const bool in_band = off_mps(scenario, now.cas_mps) <= settings.band_mps;
    switch (state.task) {
    case Task::set_flap:
        if (moving) state = {Task::hold};
        break;
    case Task::hold:
        state.held_s = in_band ? state.held_s + tick_s : 0.0;
        if (state.held_s >= settings.hold_s) state = {Task::hands_off, state.held_s};
        break;
    case Task::hands_off:
        state.hands_off_s = std::abs(now.stick) <= hands_off_stick ? state.hands_off_s + tick_s : 0.0;
        state.asked_s += tick_s;
        if (state.hands_off_s < settings.hands_off_s &&
            state.asked_s < most_hands_off_tries * settings.hands_off_s)
            break;
        state.task = now.flap_setting < landing_flap(scenario.aircraft) ? Task::set_flap : Task::done;
        break;
    case Task::done: break;
    }
}

std::string speed_hold_words(const SpeedHoldState& state, const SpeedHold& settings, const Scenario& scenario,
                             const Attempt& attempt) {
    const int next = std::min(attempt.controls.flap + 1, landing_flap(scenario.aircraft));
    switch (state.task) {
    case Task::set_flap: return "Set flap: " + scenario.aircraft.flaps[static_cast<std::size_t>(next)].name;
    case Task::hold:
        return drill_format("Hold %.0f kt: %.0f of %.0f s", kt_from_mps(scenario.lesson.target_cas_mps),
                            std::floor(state.held_s), settings.hold_s);
    case Task::hands_off:
        return drill_format("Hands off: %.0f of %.0f s", std::floor(state.hands_off_s), settings.hands_off_s);
    case Task::done: break;
    }
    return "Done";
}

std::vector<Figure> speed_hold_figures(const SpeedHold& settings, const Scenario& scenario,
                                       const Track& track) {
    const TrackPoints points{track.points};
    const Configuration configuration = configuration_of(scenario, points);
    const std::size_t steps = configuration.steps.size();
    if (steps == 0 || points.back().flap_setting != landing_flap(scenario.aircraft)) return {};
    double least_held_s = 1e9, most_bump_m = 0.0, slowest_trim_s = 0.0, most_change_mps = 0.0;
    bool trimmed = true, let_go = true;
    for (std::size_t step = 0; step < steps; ++step) {
        const TrackPoints after = after_step(points, configuration, step);
        const FlapStep& flap = configuration.steps[step];
        least_held_s = std::min(least_held_s, held_s(settings, scenario, after));
        most_bump_m = std::max(most_bump_m, bump_m(points, flap.point));
        trimmed &= flap.retrim_s >= 0.0;
        slowest_trim_s = std::max(slowest_trim_s, flap.retrim_s);
        const double change_mps = hands_off_change_mps(settings, after);
        let_go &= change_mps >= 0.0;
        most_change_mps = std::max(most_change_mps, change_mps);
    }
    std::vector<Figure> figures{{Measure::held_s, least_held_s}, {Measure::bump_ft, ft_from_m(most_bump_m)}};
    if (trimmed) figures.push_back({Measure::retrim_s, slowest_trim_s});
    if (let_go) figures.push_back({Measure::hands_off_kt, kt_from_mps(most_change_mps)});
    return figures;
}

}  // namespace slopewise
