#include "flight/model_pilot.h"

#include "base/exact_math.h"
#include "base/interpolate.h"
#include "base/units.h"

namespace slopewise {
namespace {

// Power mends the path: the sink that brings the eye back to the path within the closure time is the
// path's own sink plus the height off divided by that time; the lever answers the difference.
void decide_power(ModelPilot& pilot, const Sight& sight) {
    const PilotSkill& skill = pilot.skill;
    const double height_off_m = sight.path_error_rad * sight.distance_m;
    const double path_sink_mps = sight.ground_speed_mps * exact::tan(pilot.plan.nominal_path_rad);
    const double wanted_sink_mps = path_sink_mps + clamp(height_off_m / skill.closure_s, -1.0, 1.0);
    const double sink_error_mps = sight.sink_mps - wanted_sink_mps;  // positive: coming down too fast

    pilot.power_hold = clamp(pilot.power_hold + 0.012 * sink_error_mps * skill.decision_s, -0.25, 0.25);
    const double lever = pilot.plan.throttle + pilot.power_hold + skill.rate_to_power * sink_error_mps;
    pilot.hands.throttle = clamp(lever, 0.0, 1.0);
}

// Attitude holds the speed: the briefed attitude, changed a little for the speed error, and for the
// path error so that both controls share it.
void decide_attitude(ModelPilot& pilot, const Sight& sight) {
    const double speed_error_mps = sight.cas_mps - pilot.plan.target_cas_mps;
    const double for_speed = clamp(pilot.skill.speed_to_pitch * speed_error_mps, -0.06, 0.06);
    const double for_path = clamp(-0.5 * sight.path_error_rad, -0.01, 0.01);
    pilot.wanted_pitch_rad = pilot.plan.pitch_rad + for_speed + for_path;
}

}  // namespace

ModelPilot make_pilot(const PilotPlan& plan, const PilotSkill& skill, std::uint64_t seed,
                      const ControlPositions& start) {
    ModelPilot pilot{plan, skill, {seed}, start, plan.pitch_rad, 0.0, 0.0};
    pilot.hands.flap = plan.landing_flap;
    return pilot;
}

Controls fly(ModelPilot& pilot, const Sight& sight, double time_s) {
    if (time_s >= pilot.next_look_s) {
        decide_power(pilot, sight);
        decide_attitude(pilot, sight);
        pilot.next_look_s = time_s + pilot.skill.decision_s;
    }
    const double tremor = pilot.skill.hand_noise * next_normal(pilot.random);
    const double attitude_error = pilot.wanted_pitch_rad - sight.pitch_rad;
    const double stick = pilot.skill.attitude_gain * attitude_error -
                         pilot.skill.attitude_damping * sight.pitch_rate_radps + tremor;
    pilot.hands.stick = clamp(stick, -1.0, 1.0);
    // Trim takes over what the hand holds, slowly: a pressure held is a pressure trimmed away.
    pilot.hands.trim = clamp(pilot.hands.trim + 0.0015 * pilot.hands.stick, -1.0, 1.0);
    return quantize(pilot.hands);
}

}  // namespace slopewise
