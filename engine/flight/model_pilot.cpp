#include "flight/model_pilot.h"

#include <cmath>

#include "base/exact_math.h"
#include "base/interpolate.h"
#include "base/units.h"

namespace slopewise {
namespace {

constexpr double gate_m = m_from_ft(300.0);

// The path error with the aim moved: short by one who ducks under, beyond by one who stays above another's
// path.
double seen_error_rad(const ModelPilot& pilot, const Sight& sight) {
    const bool ducks = sight.wheel_height_m <= pilot.skill.duck_below_m;
    if (!ducks && pilot.skill.aim_beyond_m == 0.0) return sight.path_error_rad;
    const double height_m = sight.distance_m * exact::tan(sight.path_error_rad + pilot.plan.nominal_path_rad);
    const double distance_m =
        sight.distance_m + pilot.skill.aim_beyond_m - (ducks ? pilot.skill.duck_m : 0.0);
    if (distance_m < 100.0) return 0.02;
    return exact::atan2(height_m, distance_m) - pilot.plan.nominal_path_rad;
}

// Whether the pilot acts on this error yet.
bool acts_on(ModelPilot& pilot, double error_rad, double time_s) {
    if (std::abs(error_rad) < pilot.skill.power_dead_band_rad) {
        pilot.error_since_s = -1.0;
        return pilot.skill.power_dead_band_rad == 0.0;
    }
    if (pilot.error_since_s < 0.0) pilot.error_since_s = time_s;
    return time_s - pilot.error_since_s >= pilot.skill.power_wait_s;
}

// Whether the pilot still flies level, below a path that has not come yet.
bool waits_level(ModelPilot& pilot, double error_rad) {
    if (error_rad > -rad_from_deg(0.1)) pilot.path_met = true;
    return pilot.skill.level_until_path && !pilot.path_met;
}

// Power mends the path: the sink that brings the eye back to the path within the closure time is the
// path's own sink plus the height off divided by that time; the lever answers the difference.
void decide_power(ModelPilot& pilot, const Sight& sight, double error_rad, double time_s) {
    const PilotSkill& skill = pilot.skill;
    if (skill.glides) {
        pilot.hands.throttle = 0.0;
        return;
    }
    if (!skill.minds_wind) {
        pilot.hands.throttle = pilot.plan.calm_throttle;
        return;
    }
    if (!acts_on(pilot, error_rad, time_s)) return;
    if (skill.stretch_gain > 0.0 && error_rad < 0.0) return;  // stretches instead
    const double height_off_m = error_rad * sight.distance_m;
    const double path_sink_mps = sight.ground_speed_mps * exact::tan(pilot.plan.nominal_path_rad);
    const double to_mend_mps = clamp(height_off_m / skill.closure_s, -1.0, 1.0);
    const double wanted_sink_mps = waits_level(pilot, error_rad) ? 0.0 : path_sink_mps + to_mend_mps;
    const double sink_error_mps = sight.sink_mps - wanted_sink_mps;  // positive: coming down too fast

    pilot.power_hold = clamp(pilot.power_hold + 0.012 * sink_error_mps * skill.decision_s, -0.25, 0.25);
    const double lever = pilot.plan.throttle + pilot.power_hold + skill.rate_to_power * sink_error_mps;
    pilot.hands.throttle = clamp(lever, 0.0, 1.0);
}

// Attitude holds the speed: the briefed attitude, changed a little for the speed error, and for the
// path error so that both controls share it.
void decide_attitude(ModelPilot& pilot, const Sight& sight, double error_rad) {
    const double speed_error_mps = sight.airspeed_shown ? sight.cas_mps - pilot.plan.target_cas_mps : 0.0;
    const double for_speed = clamp(pilot.skill.speed_to_pitch * speed_error_mps, -0.06, 0.06);
    const double for_path = clamp(-0.5 * error_rad, -0.01, 0.01);
    const double stretch = error_rad < 0.0 ? clamp(-pilot.skill.stretch_gain * error_rad, 0.0, 0.08) : 0.0;
    const std::size_t flap = static_cast<std::size_t>(pilot.hands.flap);
    const double for_flap = pilot.skill.knows_flaps ? pilot.plan.flap_pitch_rad[flap] : 0.0;
    pilot.pitch_learned_rad =
        clamp(pilot.pitch_learned_rad + pilot.skill.speed_learning * speed_error_mps * pilot.skill.decision_s,
              -0.2, 0.2);
    pilot.wanted_pitch_rad = pilot.plan.pitch_rad + for_speed + (pilot.skill.glides ? 0.0 : for_path) +
                             stretch + for_flap + pilot.skill.nose_high_rad + pilot.pitch_learned_rad;
}

// How far beyond where the pilot aims the glide would end if it went on straight.
double glide_beyond_aim_m(const ModelPilot& pilot, const Sight& sight) {
    if (sight.sink_mps <= 0.0) return 1e9;
    const double height_m = sight.distance_m * exact::tan(sight.path_error_rad + pilot.plan.nominal_path_rad);
    return height_m / sight.sink_mps * sight.ground_speed_mps - sight.distance_m - pilot.skill.aim_beyond_m;
}

// Flap by height; in a glide a stage at a time, where it would go too far.
void decide_flap(ModelPilot& pilot, const Sight& sight, double time_s) {
    const PilotSkill& skill = pilot.skill;
    if (skill.glides && skill.flap_at_m == 0.0) {
        // A stage takes about a fifth of the distance away; none is lowered before the last has settled.
        constexpr double settles_s = 10.0, stage_share = 0.2;
        if (pilot.hands.flap >= pilot.plan.landing_flap || time_s - pilot.flap_since_s < settles_s ||
            glide_beyond_aim_m(pilot, sight) < stage_share * sight.distance_m)
            return;
        ++pilot.hands.flap;
        pilot.flap_since_s = time_s;
        return;
    }
    if (sight.wheel_height_m <= skill.first_flap_at_m && pilot.hands.flap == 0 && pilot.plan.landing_flap > 0)
        pilot.hands.flap = 1;
    if (sight.wheel_height_m <= skill.flap_at_m) pilot.hands.flap = pilot.plan.landing_flap;
}

// What a careful pilot looks at besides: that landing flap is out, and that the sink is near the path's own.
bool looks_whole(const ModelPilot& pilot, const Sight& sight) {
    if (!pilot.skill.checks_all) return true;
    const double path_sink_mps = sight.ground_speed_mps * exact::tan(pilot.plan.nominal_path_rad);
    return std::abs(sight.flap - pilot.plan.landing_flap) < 0.1 &&
           std::abs(sight.sink_mps - path_sink_mps) < mps_from_fpm(200.0);
}

// At 300 ft: on the path and at the speed, or around. What is seen there, not hoped for.
void decide_gate(ModelPilot& pilot, const Sight& sight) {
    if (pilot.gate_passed || sight.wheel_height_m > gate_m) return;
    pilot.gate_passed = true;
    const double speed_error_kt =
        sight.airspeed_shown ? kt_from_mps(sight.cas_mps - pilot.plan.target_cas_mps) : 0.0;
    const bool path = std::abs(sight.path_error_rad) <= rad_from_deg(0.5);
    const bool speed = speed_error_kt >= -5.0 && speed_error_kt <= 10.0;
    const bool sink = fpm_from_mps(sight.sink_mps) <= 800.0;
    if (pilot.skill.goes_around && !(path && speed && sink && looks_whole(pilot, sight)))
        pilot.hands.go_around = true;
}

// Full power, the nose up to a gentle climb, flap up in stages once climbing.
Controls fly_around(ModelPilot& pilot, const Sight& sight) {
    pilot.hands.throttle = 1.0;
    pilot.wanted_pitch_rad = rad_from_deg(4.0);
    if (sight.sink_mps < -mps_from_fpm(200.0)) pilot.hands.flap = pilot.plan.landing_flap > 0 ? 1 : 0;
    const double stick = pilot.skill.attitude_gain * (pilot.wanted_pitch_rad - sight.pitch_rad) -
                         pilot.skill.attitude_damping * sight.pitch_rate_radps;
    pilot.hands.stick = clamp(stick, -1.0, 1.0);
    return quantize(pilot.hands);
}

// A change of the lights near the ground jerks the hand of one who chases them, away from the new colour.
void notice_lamps(ModelPilot& pilot, const Sight& sight) {
    if (pilot.lamps >= 0 && sight.white_count >= 0 && sight.white_count != pilot.lamps &&
        sight.wheel_height_m < m_from_ft(200.0))
        pilot.jerk = sight.white_count > pilot.lamps ? -pilot.skill.lamp_stick : pilot.skill.lamp_stick;
    if (sight.white_count >= 0) pilot.lamps = sight.white_count;
    pilot.jerk *= 1.0 - 0.012;  // let go within a second
}

// A seed's own share of a habit: 0.85 to 1.15 of it.
double varied(Random& random, double value) { return value * (0.85 + 0.3 * next_uniform(random)); }

}  // namespace

std::optional<PilotSkill> pilot_skill(std::string_view name) {
    PilotSkill skill;
    if (name == "good") return skill;
    if (name == "late_power") {
        skill.power_wait_s = 6.0;
        skill.power_dead_band_rad = rad_from_deg(0.45);
    } else if (name == "over_control") {
        skill.attitude_gain = 5.0;
        skill.attitude_damping = -0.6;
        skill.hand_noise = 0.014;
        skill.rate_to_power = 0.16;
    } else if (name == "needle_chasing") {
        skill.speed_to_pitch = 0.0;
        skill.needle_gain = 0.10;
        skill.attitude_gain = 0.35;
        skill.hand_noise = 0.012;
        skill.trim_share = 0.0;
    } else if (name == "low_stretch") {
        skill.stretch_gain = 5.0;
        skill.speed_to_pitch = 0.003;  // lets the speed go for the height
        skill.goes_around = false;
    } else if (name == "duck_under") {
        skill.duck_below_m = m_from_ft(230.0);
        skill.duck_m = 260.0;
    } else if (name == "late_flap") {
        skill.flap_at_m = m_from_ft(260.0);
        skill.trim_share = 0.0;
        skill.goes_around = false;
    } else if (name == "light_chasing") {
        skill.lamp_stick = 0.35;
        skill.duck_below_m = m_from_ft(230.0);  // a little short of the aim, so that the lights change
        skill.duck_m = 80.0;
    } else if (name == "ignores_wind") {
        skill.minds_wind = false;
        skill.goes_around = false;
    } else if (name == "presses_on") {
        skill.power_wait_s = 8.0;
        skill.power_dead_band_rad = rad_from_deg(0.9);
        skill.goes_around = false;
    } else {
        return std::nullopt;
    }
    return skill;
}

ModelPilot make_pilot(const PilotPlan& plan, const PilotSkill& skill, std::uint64_t seed,
                      const ControlPositions& start) {
    ModelPilot pilot;
    pilot.plan = plan;
    pilot.skill = skill;
    pilot.random.state = seed;
    pilot.hands = start;
    pilot.wanted_pitch_rad = plan.pitch_rad;
    pilot.skill.attitude_gain = varied(pilot.random, skill.attitude_gain);
    pilot.skill.closure_s = varied(pilot.random, skill.closure_s);
    pilot.skill.power_wait_s = varied(pilot.random, skill.power_wait_s);
    pilot.skill.duck_m = varied(pilot.random, skill.duck_m);
    return pilot;
}

Controls fly(ModelPilot& pilot, const Sight& sight, double time_s) {
    if (pilot.hands.go_around) return fly_around(pilot, sight);
    notice_lamps(pilot, sight);
    decide_gate(pilot, sight);
    if (time_s >= pilot.next_look_s) {
        const double error_rad = seen_error_rad(pilot, sight);
        decide_power(pilot, sight, error_rad, time_s);
        decide_attitude(pilot, sight, error_rad);
        pilot.next_look_s = time_s + pilot.skill.decision_s;
    }
    decide_flap(pilot, sight, time_s);
    const double tremor = pilot.skill.hand_noise * next_normal(pilot.random);
    const double attitude_error = pilot.wanted_pitch_rad - sight.pitch_rad;
    const double needle = pilot.skill.needle_gain * (sight.cas_mps - pilot.plan.target_cas_mps);
    const double stick = pilot.skill.attitude_gain * attitude_error -
                         pilot.skill.attitude_damping * sight.pitch_rate_radps + needle + pilot.jerk + tremor;
    pilot.hands.stick = clamp(stick, -1.0, 1.0);
    // Trim takes over what the hand holds, slowly: a pressure held is a pressure trimmed away.
    pilot.hands.trim = clamp(pilot.hands.trim + pilot.skill.trim_share * pilot.hands.stick, -1.0, 1.0);
    return quantize(pilot.hands);
}

}  // namespace slopewise
