// A model pilot: flies an approach with the controls a student has, by what a student can see. It
// demonstrates, makes golden flights, and shows that an approach can be flown.
#pragma once

#include <cstdint>

#include "base/random.h"
#include "flight/controls.h"

namespace slopewise {

// What the pilot sees now.
struct Sight {
    double path_error_rad = 0.0;  // eye's elevation less the nominal path, positive high
    double distance_m = 0.0;      // to the aim point
    double cas_mps = 0.0;
    double sink_mps = 0.0;  // positive down
    double ground_speed_mps = 0.0;
    double pitch_rad = 0.0;
    double pitch_rate_radps = 0.0;
};

// What the pilot knows before: the briefing's figures.
struct PilotPlan {
    double target_cas_mps = 0.0;
    double nominal_path_rad = 0.0;
    double pitch_rad = 0.0;  // for the path at target speed with landing flap
    double throttle = 0.0;   // likewise
    int landing_flap = 0;
};

// How the pilot flies: gains, delay and unsteadiness. The defaults make the good pilot.
struct PilotSkill {
    double attitude_gain = 2.2;     // stick per radian of attitude error
    double attitude_damping = 1.4;  // stick per rad/s
    double speed_to_pitch = 0.009;  // radians of attitude per m/s of speed error
    double rate_to_power = 0.055;   // lever per m/s of closure error
    double closure_s = 12.0;        // wants a path error gone in this time
    double hand_noise = 0.004;      // standard deviation of the stick, share of travel
    double decision_s = 0.5;        // looks and decides this often
};

struct ModelPilot {
    PilotPlan plan;
    PilotSkill skill;
    Random random;
    ControlPositions hands;
    double wanted_pitch_rad = 0.0;
    double power_hold = 0.0;  // slowly learned lever correction
    double next_look_s = 0.0;
};

// `seed` shapes the unsteadiness of the hand; `start` is where the controls stand.
ModelPilot make_pilot(const PilotPlan& plan, const PilotSkill& skill, std::uint64_t seed,
                      const ControlPositions& start);

// The controls for the coming tick, at a time (s) since the start.
Controls fly(ModelPilot& pilot, const Sight& sight, double time_s);

}  // namespace slopewise
