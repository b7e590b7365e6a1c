#include "question/answer_parts.h"

#include <algorithm>
#include <cmath>

#include "base/units.h"
#include "review/stability.h"

namespace slopewise {
namespace {

// Points of the last `gate_window_s` seconds.
TrackPoints newest(const Track& track) {
    const TrackPoints all = scored_points(track);
    std::size_t first = all.size() - 1;
    while (first > 0 && all.back().time_s - all[first - 1].time_s <= gate_window_s) --first;
    return all.subspan(first);
}

void keep_greater(double& kept, double change) {
    if (std::abs(change) > std::abs(kept)) kept = change;
}

}  // namespace

std::string light_fault_words(const Scenario& scenario, const Attempt& attempt) {
    const LightFaults faults = light_faults(scenario, attempt.conditions);
    if (faults.all_out) return "the lights are out";
    if (faults.condensation > 0.0) return "the lenses are wet, so that red looks pale or white";
    for (std::size_t i = 0; i < static_cast<std::size_t>(scenario.lights.count); ++i) {
        if (faults.out[i]) return "a lamp is out";
        if (faults.aim_error_rad[i] != 0.0) return "a lamp is set wrong";
    }
    return "";
}

GateValue gate_now(const FlownSoFar& flown) {
    const TrackPoints points = scored_points(flown.track);
    const double decision_ft = flown.criteria.decision_gate_ft;
    if (const GateValue gate = gate_value(flown.scenario, points, decision_ft);
        gate.reached && points.back().time_s - gate.time_s <= gate_window_s)
        return gate;
    // A little over the last point, so that no rounding puts it beneath.
    constexpr double over_ft = 0.001;
    const double height_ft = ft_from_m(points.back().wheel_height_m) + over_ft;
    const GateValue gate = gate_value(flown.scenario, points, height_ft);
    if (gate.reached && gate.point + 1 == points.size()) return gate;
    GateValue still = start_value(flown.scenario, newest(flown.track));
    still.height_ft = height_ft;
    return still;
}

bool is_near_a_limit(const FlownSoFar& flown, const GateValue& gate) {
    const auto stable_by = [&](double share) {
        Criteria criteria = flown.criteria;
        for (GateCriteria* limits : {&criteria.far, &criteria.decision, &criteria.near}) {
            for (double* limit : {&limits->path_rad, &limits->path_floor_m, &limits->slow_mps,
                                  &limits->fast_mps, &limits->sink_mps, &limits->most_sink_mps})
                *limit *= share;
        }
        return stability_at(flown.scenario, criteria, gate).stable();
    };
    return stable_by(0.9) != stable_by(1.1);
}

FirstSeen first_seen(const Question& question, const FlownSoFar& flown) {
    Attempt alone = flown.attempt, moved = flown.attempt;
    const Controls held =
        flown.attempt.tick > 0 ? flown.attempt.controls : quantize(flown.scenario.start_trim.controls);
    const Controls with_step = quantize(stepped(question, flown.scenario, positions_of(held)));
    const double from_s = time_s(flown.attempt);
    FirstSeen found;
    std::array<double, 2> when;
    when.fill(2.0 * answers_within_s);
    while (time_s(moved) - from_s < answers_within_s) {
        tick(flown.scenario, alone, held);
        tick(flown.scenario, moved, with_step);
        const TrackPoint a = observe(flown.scenario, alone), b = observe(flown.scenario, moved);
        const std::array<bool, 2> seen{std::abs(b.cas_mps - a.cas_mps) >= noticed_speed_mps,
                                       std::abs(b.sink_mps - a.sink_mps) >= noticed_sink_mps};
        for (std::size_t i = 0; i < seen.size(); ++i)
            if (seen[i] && when[i] > answers_within_s) when[i] = time_s(moved) - from_s;
        keep_greater(found.speed_mps, b.cas_mps - a.cas_mps);
        keep_greater(found.sink_mps, b.sink_mps - a.sink_mps);
        if (moved.end != End::none || alone.end != End::none) break;
    }
    const bool speed_first = when[0] < when[1];
    found.after_s = speed_first ? when[0] : when[1];
    found.next_after_s = speed_first ? when[1] : when[0];
    if (found.after_s <= answers_within_s) found.what = speed_first ? 0 : 1;
    return found;
}

ControlPositions stepped(const Question& question, const Scenario& scenario, ControlPositions hands) {
    const double share = question.step_share;
    switch (question.step) {
    case ControlStep::power_up: hands.throttle += share; break;
    case ControlStep::power_down: hands.throttle -= share; break;
    case ControlStep::nose_up: hands.stick += share; break;
    case ControlStep::nose_down: hands.stick -= share; break;
    case ControlStep::flap_down:
        hands.flap = std::min(hands.flap + 1, scenario.aircraft.flap_count - 1);
        break;
    case ControlStep::trim_up: hands.trim += share; break;
    case ControlStep::trim_down: hands.trim -= share; break;
    }
    return positions_of(quantize(hands));
}

}  // namespace slopewise
