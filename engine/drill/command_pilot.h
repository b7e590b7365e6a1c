// A pilot who does what is told and nothing else: the student tells, the model flies. Each command moves a
// set point of the power or the attitude a little; the hands hold them.
#pragma once

#include <array>
#include <string_view>

#include "drill/drill.h"
#include "flight/model_pilot.h"

namespace slopewise {

enum class Command { more_power, less_power, nose_up, nose_down, flap, trim, wait, go_around };
inline constexpr std::array<std::string_view, 8> command_words{"A little more power",
                                                               "A little less power",
                                                               "Nose up a little",
                                                               "Nose down a little",
                                                               "Flap",
                                                               "Trim",
                                                               "Wait",
                                                               "Go around"};

struct CommandPilot {
    ControlPositions hands;
    double wanted_pitch_rad = 0.0;
    double trim_left_s = 0.0;  // still trimming away what the stick holds
    int landing_flap = 0;
    bool going_around = false;
};

// Holding what the flight starts with.
CommandPilot make_command_pilot(const Scenario& scenario);

// "Flap" is one setting further, to landing flap at most; after "go around" only the nose, flap (then one
// setting up) and trim are still told.
void tell(CommandPilot& pilot, const TellAndFly& settings, Command command);

// The controls for the coming tick.
Controls fly(CommandPilot& pilot, const Sight& sight);

}  // namespace slopewise
