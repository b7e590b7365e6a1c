// A model pilot: flies an approach with the controls a student has, by what a student can see. The good one
// demonstrates and makes golden flights; the faulty ones make, on purpose and by their seed, the approaches
// that a debrief must find the fault in.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string_view>

#include "base/random.h"
#include "flight/controls.h"

namespace slopewise {

// What the pilot sees now.
struct Sight {
    double path_error_rad = 0.0;  // eye's elevation less the nominal path, positive high
    double distance_m = 0.0;      // to the aim point
    double wheel_height_m = 0.0;  // above the threshold
    double cas_mps = 0.0;         // as the indicator shows it
    bool airspeed_shown = true;   // false: blank; the pilot falls back on attitude
    double sink_mps = 0.0;        // positive down
    double ground_speed_mps = 0.0;
    double pitch_rad = 0.0;
    double pitch_rate_radps = 0.0;
    int white_count = -1;  // of the slope lights
    double flap = 0.0;     // position, in settings
};

// What the pilot knows before: the briefing's figures.
struct PilotPlan {
    double target_cas_mps = 0.0;
    double nominal_path_rad = 0.0;
    double pitch_rad = 0.0;      // for the path at target speed with landing flap
    double throttle = 0.0;       // likewise
    double calm_throttle = 0.0;  // likewise, had there been no wind
    double calm_sink_mps = 0.0;
    int landing_flap = 0;
    std::array<double, 4>
        flap_pitch_rad{};  // by setting: attitude at target speed beside that of landing flap
};

// How the pilot flies. The defaults make the good pilot; each group below can be turned into a fault.
struct PilotSkill {
    // the hand
    double attitude_gain = 2.2;     // stick per radian of attitude error
    double attitude_damping = 1.4;  // stick per rad/s
    double hand_noise = 0.004;      // standard deviation of the stick, share of travel
    double trim_share = 0.0015;     // of a held stick trimmed away each tick; 0: never trims

    // deciding
    double decision_s = 0.5;           // looks and decides this often
    double power_wait_s = 0.0;         // acts on a path error only after it has lasted so long
    double power_dead_band_rad = 0.0;  // and is larger than this
    double rate_to_power = 0.055;      // lever per m/s of sink error
    double closure_s = 12.0;           // wants a path error gone in this time
    bool minds_wind = true;            // false: power and sink as if it were calm, hardly corrected

    // speed
    double speed_to_pitch = 0.009;  // radians of attitude per m/s of speed error
    double needle_gain = 0.0;       // stick per m/s of speed error: chasing the needle
    double nose_high_rad = 0.0;     // holds the nose so much higher than briefed: slow; negative: fast
    double speed_learning = 0.0;    // radians of attitude per m/s of speed error and second
    bool knows_flaps = false;       // takes the attitude that each flap setting asks for

    // low
    double stretch_gain = 0.0;  // radians of attitude per radian low, with no power: stretching

    // joining, and where to aim
    bool level_until_path = false;  // flies level until the path comes to meet it
    double aim_beyond_m = 0.0;      // aims so far beyond the aim point
    // near the ground
    double duck_below_m = 0.0;  // wheel height below which the aim moves towards the threshold
    double duck_m = 0.0;        // by how much
    double lamp_stick = 0.0;    // stick jerked at each change of the lights below 200 ft

    // configuration and decision
    double flap_at_m = 1e9;        // wheel height at which landing flap is lowered
    double first_flap_at_m = 0.0;  // and a first stage above it; 0: straight to landing flap
    bool glides = false;           // no power; flap is lowered where the glide would go too far
    bool goes_around = true;       // when not stable at the 300 ft gate
    bool checks_all = false;       // there also by flap and sink
};

// The pilots by name: "good", "late_power", "over_control", "needle_chasing", "low_stretch", "duck_under",
// "late_flap", "light_chasing", "ignores_wind", "presses_on". Empty when there is none of that name.
std::optional<PilotSkill> pilot_skill(std::string_view name);
inline constexpr std::array<std::string_view, 10> pilot_names{
    "good",       "late_power", "over_control",  "needle_chasing", "low_stretch",
    "duck_under", "late_flap",  "light_chasing", "ignores_wind",   "presses_on"};

struct ModelPilot {
    PilotPlan plan;
    PilotSkill skill;
    Random random;
    ControlPositions hands;
    double wanted_pitch_rad = 0.0;
    double power_hold = 0.0;  // slowly learned lever correction
    double next_look_s = 0.0;
    double error_since_s = -1.0;  // when the present path error was first noticed
    int lamps = -1;               // the lights as last noticed
    double jerk = 0.0;            // stick still held after a change of the lights
    bool gate_passed = false;
    bool path_met = false;
    double pitch_learned_rad = 0.0;  // what the speed has taught about the attitude
    double flap_since_s = 0.0;       // when the last stage was lowered in a glide
};

// `seed` shapes the unsteadiness of the hand and, a little, every habit; `start` is where the controls stand.
ModelPilot make_pilot(const PilotPlan& plan, const PilotSkill& skill, std::uint64_t seed,
                      const ControlPositions& start);

// The controls for the coming tick, at a time (s) since the start.
Controls fly(ModelPilot& pilot, const Sight& sight, double time_s);

}  // namespace slopewise
