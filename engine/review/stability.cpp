#include "review/stability.h"

#include <algorithm>
#include <cmath>

#include "flight/dynamics.h"

namespace slopewise {
namespace {

bool is_small(double error, double limit) { return std::abs(error) <= 0.5 * limit; }
bool shrinks(double error, double trend) { return error * trend < 0.0; }

}  // namespace

const GateCriteria& criteria_at(const Criteria& criteria, double height_ft) {
    if (height_ft > 400.0) return criteria.far;
    return height_ft > 250.0 ? criteria.decision : criteria.near;
}

bool Stability::stable() const {
    return std::ranges::none_of(missing, [](bool one) { return one; });
}

Stability stability_at(const Scenario& scenario, const Criteria& criteria, const GateValue& gate) {
    const GateCriteria& limits = criteria_at(criteria, gate.height_ft);
    const Deviations& off = gate.mean;
    Stability result;
    const auto mark = [&](Unstable what, bool missing) {
        result.missing[static_cast<std::size_t>(what)] = missing;
    };
    const bool path_out =
        std::abs(off.path_rad) > limits.path_rad && std::abs(off.path_m) > limits.path_floor_m;
    mark(Unstable::high, path_out && off.path_rad > 0.0);
    mark(Unstable::low, path_out && off.path_rad < 0.0);
    mark(Unstable::fast, off.speed_mps > limits.fast_mps);
    mark(Unstable::slow, off.speed_mps < -limits.slow_mps);
    mark(Unstable::sinking, off.sink_mps > limits.sink_mps);
    mark(Unstable::not_sinking, off.sink_mps < -limits.sink_mps);
    mark(Unstable::excessive_sink, gate.sink_mps > limits.most_sink_mps);
    if (gate.height_ft <= 500.0) {
        const double idle = settled_power(scenario.aircraft.engine, 0.0);
        mark(Unstable::idle, gate.power < idle + criteria.least_power_over_idle);
        mark(Unstable::flap, criteria.landing_flap && gate.flap_setting != briefed_flap(scenario));
    }
    if (gate.height_ft == criteria.decision_gate_ft) {
        mark(Unstable::pitch, gate.pitch_range_rad > criteria.most_pitch_range_rad);
        mark(Unstable::lever, gate.lever_step > criteria.most_lever_step);
    }
    const double speed_limit = off.speed_mps < 0.0 ? limits.slow_mps : limits.fast_mps;
    const bool path_is_small = is_small(off.path_rad, limits.path_rad);
    const bool speed_is_small = is_small(off.speed_mps, speed_limit);
    result.improving = !(path_is_small && speed_is_small) &&
                       (path_is_small || shrinks(off.path_rad, gate.path_trend_radps)) &&
                       (speed_is_small || shrinks(off.speed_mps, gate.speed_trend_mps2));
    if (scenario.lesson.glide) {
        for (const Unstable what : {Unstable::high, Unstable::low, Unstable::sinking, Unstable::not_sinking,
                                    Unstable::excessive_sink, Unstable::idle, Unstable::flap})
            mark(what, false);
    }
    return result;
}

std::string stability_words(const Stability& stability) {
    if (stability.stable()) return stability.improving ? "stable, improving" : "stable";
    std::string words;
    for (std::size_t i = 0; i < stability.missing.size(); ++i)
        if (stability.missing[i])
            words += (words.empty() ? "not stable: " : ", ") + std::string(unstable_words[i]);
    return words;
}

}  // namespace slopewise
