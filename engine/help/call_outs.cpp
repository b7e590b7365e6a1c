#include "help/call_outs.h"

#include <cmath>

namespace slopewise {
namespace {

constexpr std::int64_t ticks_in(double seconds) { return static_cast<std::int64_t>(seconds / tick_s + 0.5); }

bool path_out(const GateCriteria& limits, const CallTruth& truth) {
    return std::abs(truth.off.path_rad) > limits.path_rad && std::abs(truth.off.path_m) > limits.path_floor_m;
}

bool sinks_too_fast(const GateCriteria& limits, const CallTruth& truth) {
    return truth.off.sink_mps > limits.sink_mps || truth.sink_mps > limits.most_sink_mps;
}

bool stable(const Criteria& criteria, const GateCriteria& limits, const CallTruth& truth) {
    const bool speed_in = truth.off.speed_mps >= -limits.slow_mps && truth.off.speed_mps <= limits.fast_mps;
    return !path_out(limits, truth) && speed_in && std::abs(truth.off.sink_mps) <= limits.sink_mps &&
           truth.sink_mps <= limits.most_sink_mps && (truth.landing_flap || !criteria.landing_flap);
}

bool is_outside(CallOut call, const Criteria& criteria, const CallTruth& truth) {
    const GateCriteria& limits = criteria_at(criteria, ft_from_m(truth.height_m));
    const bool off_path = path_out(limits, truth) && !returns_properly(truth.motion);
    switch (call) {
    case CallOut::slow: return truth.speed_shown && truth.off.speed_mps < -limits.slow_mps;
    case CallOut::sink: return sinks_too_fast(limits, truth);
    case CallOut::low: return off_path && truth.off.path_rad < 0.0;
    case CallOut::high: return off_path && truth.off.path_rad > 0.0;
    case CallOut::not_stable:
    case CallOut::none: break;
    }
    return false;
}

// At the decision gate, once; a start below it is not judged.
bool passes_gate_unstable(CallOuts& calls, const Criteria& criteria, const CallTruth& truth) {
    const bool below = ft_from_m(truth.height_m) <= criteria.decision_gate_ft;
    if (!below || calls.gate_judged) return false;
    calls.gate_judged = true;
    return !stable(criteria, criteria_at(criteria, criteria.decision_gate_ft), truth);
}

CallOut due(const CallOuts& calls) {
    // By what can hurt first.
    for (const CallOut call :
         {CallOut::not_stable, CallOut::slow, CallOut::sink, CallOut::low, CallOut::high})
        if (calls.outside_ticks[static_cast<std::size_t>(call)] > ticks_in(call_after_s)) return call;
    return CallOut::none;
}

}  // namespace

std::string_view call_out_words(CallOut call, Convention convention) {
    switch (call) {
    case CallOut::none: return "";
    case CallOut::not_stable: return "not stable";
    case CallOut::slow: return "slow";
    case CallOut::sink: return "sink";
    case CallOut::high: return "high";
    case CallOut::low: break;
    }
    switch (convention) {
    case Convention::power_for_path: return "low - power";
    case Convention::pitch_for_path: return "low - pitch";
    case Convention::both: break;
    }
    return "low - power and pitch";
}

CallOut advance_calls(CallOuts& calls, const Criteria& criteria, const CallTruth& truth) {
    if (!calls.on) return CallOut::none;
    for (const CallOut call : {CallOut::slow, CallOut::sink, CallOut::low, CallOut::high}) {
        int& ticks = calls.outside_ticks[static_cast<std::size_t>(call)];
        ticks = is_outside(call, criteria, truth) ? ticks + 1 : 0;
    }
    // Found at one tick, it waits until it may be said.
    int& unstable = calls.outside_ticks[static_cast<std::size_t>(CallOut::not_stable)];
    if (passes_gate_unstable(calls, criteria, truth)) unstable = static_cast<int>(ticks_in(call_after_s)) + 1;

    if (calls.last != CallOut::none && ++calls.since_last_ticks < ticks_in(between_calls_s))
        return CallOut::none;
    const CallOut call = due(calls);
    if (call == CallOut::none) return CallOut::none;
    if (call == CallOut::not_stable) unstable = 0;
    calls.last = call;
    calls.since_last_ticks = 0;
    ++calls.said;
    return call;
}

CallTruth call_truth(const Scenario& scenario, const TrackPoint& now, bool speed_shown) {
    return {deviations(scenario, now),
            path_motion(now, scenario.surroundings.runway.lights.nominal_path_rad),
            now.sink_mps,
            now.wheel_height_m,
            now.flap_setting == landing_flap(scenario.aircraft),
            speed_shown};
}

}  // namespace slopewise
