// From what the controllers give, and what is set for them, to what the hands hold.
//
// Nothing jumps when a flight begins. A stick has no say until it has moved from where it then stood, and
// none again from the moment a stick key is used until it has moved anew: one that does not centre never
// fights the keys. A lever has no say until it has moved, nor once keys have moved the throttle; when it
// moves it moves the throttle its own way, by the share of the travel that each has left in that direction,
// so that both reach the end together, and from where they meet the throttle stands where the lever stands.
// What springs back and commands a rate must have been seen at its centre first.
#pragma once

#include <array>
#include <limits>

#include "ui/action.h"
#include "ui/controller.h"
#include "ui/controller_book.h"

namespace slopewise {

struct PilotHands;
struct RawInput;

// Between frames, of each axis of each device.
struct ControllerMemory {
    struct Axis {
        AxisDoes does = AxisDoes::nothing;                       // as what it was last read
        double last = std::numeric_limits<double>::quiet_NaN();  // where a stick rested, a lever was, a notch
        bool has_say = false;
        double given = 0;  // by a lever, last
    };
    struct Device {
        std::int32_t instance = -1;
        std::array<Axis, most_axes> axes{};
    };
    std::array<Device, most_controllers> at{};
};

// What is held down for as long as it is wanted.
struct ControllerHolds {
    bool path_help = false, look_in = false;
};

// Moves the hands by the time since the last frame, and marks what moved them. `raw` has its keys as the
// right hand has them.
ControllerHolds fly_by_controllers(PilotHands& hands, const RawInput& raw, const ControllerBook& book,
                                   int flap_count, double dt_s);

// What buttons ask for that is no control; before a class the pause freezes its flight.
Actions controller_actions(const ControllerReadings& readings, const ControllerBook& book,
                           bool before_class = false);

}  // namespace slopewise
