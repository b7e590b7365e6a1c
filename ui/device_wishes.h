// What the sheets about keys, controllers, sound and the program itself may ask for.
#pragma once

#include <string>
#include <variant>

namespace slopewise {

// ---- keys and fingers ----
struct OpenKeys {};
struct CloseKeys {};
struct DoWithKeys {
    enum class Wish {
        ask_key,     // the next key pressed is taken for command `which`
        leave_key,   // no other key after all
        take_key,    // key `which` (of Key) for the command that asked; it gives `gives` (see BoundKey)
        usual_keys,  // all of them as they ship
        sticky,      // held keys stay after a press, or not
        thumb_pads,  // shown, or not
    };
    Wish wish;
    int which = 0;
    char32_t gives = 0;
};

struct ToggleFullScreen {};

// ---- stick, yoke, levers ----
struct OpenControllers {};
struct CloseControllers {};
struct DoWithController {
    enum class Wish {
        choose,     // device `which` of ControllersView
        calibrate,  // begin, from its first step
        next_step,
        leave,          // the calibration, with nothing changed
        set_axis,       // what axis or button `which` does: `amount` into its choices
        invert,         // axis `which`, the other way round
        set_dead_zone,  // axis `which`: `amount`, a share of its travel
        set_expo,       // axis `which`: `amount`, 0 ... 1
        forget,         // what was set for it
    };
    Wish wish;
    int which = 0;
    double amount = 0;
};

// ---- sound ----
struct SetVolume {
    double share;  // 0 ... 1
};

// ---- the program itself ----
struct OpenAbout {};
struct CloseAbout {};
struct DoWithProgram {
    enum class Wish {
        take_update,    // load the newer version that waits
        show_licences,  // of every part it is made of
        erase_all,      // asked for first, then for good
        keep_all,       // erase nothing after all
    };
    Wish wish;
};

using DeviceWish =
    std::variant<OpenKeys, CloseKeys, DoWithKeys, ToggleFullScreen, OpenControllers, CloseControllers,
                 DoWithController, SetVolume, OpenAbout, CloseAbout, DoWithProgram>;

}  // namespace slopewise
