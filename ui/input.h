// From keys and the mouse to what the hands hold: a stick that springs back to trim, a throttle lever
// that stays, flap steps, trim, and the wishes that are not controls (pause, again, go around).
#pragma once

#include <array>

#include "flight/controls.h"
#include "ui/action.h"
#include "ui/controller.h"
#include "ui/controller_input.h"
#include "ui/devices_used.h"
#include "ui/fingers.h"
#include "ui/keys.h"
#include "ui/screens/screens.h"
#include "ui/settings.h"
#include "ui/sticky_keys.h"
#include "ui/view.h"

namespace slopewise {

struct RawInput {
    double wall_s = 0.0;  // a clock that never runs back
    std::array<bool, static_cast<std::size_t>(Key::count)> held{};
    std::array<bool, static_cast<std::size_t>(Key::count)> pressed{};  // went down since the last frame
    char32_t gives = 0;  // the key that went down last, where it is best called by that (key_names.h)

    ControllerReadings controllers;
    Fingers fingers{};

    bool is_held(Key key) const { return held[static_cast<std::size_t>(key)]; }
    bool was_pressed(Key key) const { return pressed[static_cast<std::size_t>(key)]; }
};

// The hands between frames.
struct PilotHands {
    ControlPositions at;
    double stick_held_s = 0.0;  // how long a stick key has been down
    double lever_held_s = 0.0;
    bool mouse_has_stick = false;
    bool controller_has_stick = false;  // from its first movement until a stick key is used
    double last_wall_s = 0.0;
    bool key_peeks = false, finger_peeks = false;  // the panel is looked at

    bool key_calls_help = false, finger_calls_help = false;

    HeldSo held_so{};  // by sticky keys
    ControllerMemory controllers{};
    DevicesUsed used{};  // what has moved a control since the flight began
    Fingers fingers{};

    bool calls_for_help() const { return key_calls_help || finger_calls_help; }
    bool peek() const { return key_peeks || finger_peeks; }
};

struct Wishes {
    ControlPositions controls;
    Actions actions;
};

// Moves the hands by the time since the last frame and says what they hold. `flap_count` limits flap.
Wishes read_input(PilotHands& hands, const RawInput& raw, const Settings& settings, int flap_count);

// The keys of the instructor before a class besides those of the hands: the clicker's, those that count
// hands. These are never rebound and come first; pausing, going around and the like are on the keys of
// flying.
Actions read_class_keys(const RawInput& raw, const KeyBindings& bindings = {});

// What is left for the hands before a class.
RawInput without_class_keys(RawInput raw);

// The shortcuts of a screen that is read, not flown; what is focused answers to Tab, arrows and Enter itself.
Actions read_shortcuts(const RawInput& raw, Screen screen);

// The keys in words, in the sense the user chose, as they are bound; the one that looks in only with eyes
// outside.
std::vector<KeyHint> key_hints(const Settings& settings, bool eyes_outside);
inline std::vector<KeyHint> key_hints(const Settings& settings) {
    return key_hints(settings, settings.display.eyes_outside);
}

}  // namespace slopewise
