#include <algorithm>
#include <cmath>

#include "review/diagnosis/detectors.h"

namespace slopewise::detect {

// Unstable at the gate and continued, by what a student can see there: a fifth beyond the limit of path or
// speed, an excessive sink, no power, no flap. The nose and the power not yet settled is a miss in the table
// of decisions, but not enough to name a fault by.
Evidence pressed_on(const Approach& approach) {
    const double gate_ft = approach.criteria.decision_gate_ft;
    const GateValue* gate = gate_at(approach.review, gate_ft);
    if (approach.review.decision != Decision::miss || gate == nullptr) return {};
    const Stability& stability = *stability_at(approach.review, gate_ft);
    const GateCriteria& limits = criteria_at(approach.criteria, gate_ft);
    double most = stability.misses(Unstable::excessive_sink) || stability.misses(Unstable::idle) ||
                          stability.misses(Unstable::flap)
                      ? 1.2
                      : 0.0;
    if (stability.misses(Unstable::high) || stability.misses(Unstable::low))
        most = std::max(most, std::abs(gate->mean.path_rad) / limits.path_rad);
    if (stability.misses(Unstable::fast)) most = std::max(most, gate->mean.speed_mps / limits.fast_mps);
    if (stability.misses(Unstable::slow)) most = std::max(most, -gate->mean.speed_mps / limits.slow_mps);
    return {most / 1.2, {gate->point}};
}

// The lever not at full power two seconds after the go-around began (partial power is never appropriate:
// Airplane Flying Handbook, go-arounds, from memory), or flap raised while still sinking.
Evidence partial_go_around(const Approach& approach) {
    const GoAroundFigures& around = approach.review.go_around;
    constexpr double enough_s = 2.0;
    if (!around.flown || around.flown_on_s < enough_s) return {};
    const bool late = around.full_power_s < 0.0 || around.full_power_s > enough_s;
    return {late || around.flap_before_climb ? 1.0 : 0.0, {around.point}};
}

}  // namespace slopewise::detect
