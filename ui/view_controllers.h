// What the sheet about sticks, yokes and levers shows.
#pragma once

#include <string>
#include <vector>

namespace slopewise {

struct ControllersView {
    struct Axis {
        std::string name;      // "Axis 2"
        int chosen = 0;        // into axis_choices
        bool springs = false;  // it has a centre, a dead zone and expo
        bool stays = false;    // it does something, and has none of them
        bool inverted = false;
        double dead_zone = 0, expo = 0;
        bool told = false;                           // the device has told it
        double raw = 0, shaped = 0;                  // now: -1 ... +1, what stays 0 ... 1 when shaped
        std::vector<float> raw_trace, shaped_trace;  // of the last seconds, oldest first, each -1 ... +1
    };
    struct Button {
        std::string name;  // "Button 3"
        int chosen = 0;    // into button_choices
        bool down = false;
    };
    std::vector<std::string> axis_choices, button_choices;
    std::vector<std::string> devices;  // names; none: nothing is connected
    int device = 0;                    // the one shown
    bool kept = false;                 // set by hand, not as it comes
    std::vector<Axis> axes;
    std::vector<Button> buttons;
    std::string step;        // of a calibration: what to do now; empty: none runs
    std::string step_count;  // "Step 2 of 5"
    std::string found;       // what has moved most since the step began
    bool last_step = false;
    std::string advice;  // what to do when none is connected, or what it is at first
    std::string news;
};

}  // namespace slopewise
