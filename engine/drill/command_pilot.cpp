#include "drill/command_pilot.h"

#include <algorithm>

#include "base/interpolate.h"
#include "base/units.h"
#include "flight/dynamics.h"

namespace slopewise {
namespace {

// The hand of the good model pilot, without its tremor: what is told is what is seen.
constexpr PilotSkill hand;
constexpr double trim_share = 0.01;  // of a held stick trimmed away each tick while trimming
constexpr double climb_pitch_rad = rad_from_deg(4.0);

}  // namespace

CommandPilot make_command_pilot(const Scenario& scenario) {
    CommandPilot pilot;
    pilot.hands = scenario.start_trim.controls;
    pilot.wanted_pitch_rad = scenario.start_state.pitch_rad;
    pilot.landing_flap = landing_flap(scenario.aircraft);
    return pilot;
}

void tell(CommandPilot& pilot, const TellAndFly& settings, Command command) {
    ControlPositions& hands = pilot.hands;
    switch (command) {
    case Command::more_power:
        if (!pilot.going_around) hands.throttle = std::min(1.0, hands.throttle + settings.lever_step);
        break;
    case Command::less_power:
        if (!pilot.going_around) hands.throttle = std::max(0.0, hands.throttle - settings.lever_step);
        break;
    case Command::nose_up: pilot.wanted_pitch_rad += settings.pitch_step_rad; break;
    case Command::nose_down: pilot.wanted_pitch_rad -= settings.pitch_step_rad; break;
    case Command::flap:
        hands.flap =
            pilot.going_around ? std::max(0, hands.flap - 1) : std::min(pilot.landing_flap, hands.flap + 1);
        break;
    case Command::trim: pilot.trim_left_s = settings.trim_s; break;
    case Command::wait: break;
    case Command::go_around:
        pilot.going_around = true;
        hands.go_around = true;
        hands.throttle = 1.0;
        pilot.wanted_pitch_rad = climb_pitch_rad;
        break;
    }
}

Controls fly(CommandPilot& pilot, const Sight& sight) {
    const double stick = hand.attitude_gain * (pilot.wanted_pitch_rad - sight.pitch_rad) -
                         hand.attitude_damping * sight.pitch_rate_radps;
    pilot.hands.stick = clamp(stick, -1.0, 1.0);
    if (pilot.trim_left_s > 0.0) {
        pilot.hands.trim = clamp(pilot.hands.trim + trim_share * pilot.hands.stick, -1.0, 1.0);
        pilot.trim_left_s -= tick_s;
    }
    return quantize(pilot.hands);
}

}  // namespace slopewise
