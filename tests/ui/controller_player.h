// Made-up controllers for the tests of the hands.
#pragma once

#include <algorithm>
#include <limits>
#include <string_view>

#include "ui/input.h"

namespace slopewise::test {

inline constexpr double frame_s = 1.0 / 60.0;

inline ControllerReading device(std::string_view name, int axes, int buttons, char id = '1') {
    ControllerReading reading;
    reading.name = controller_name(name);
    std::fill_n(reading.id.begin(), 32, id);
    reading.instance = id;
    reading.axis_count = axes;
    reading.button_count = buttons;
    return reading;
}

// As browsers give the W3C's standard gamepad.
inline ControllerReading standard_gamepad() {
    ControllerReading reading = device("Standard gamepad", 4, 17);
    reading.gamepad = true;
    return reading;
}

// A pair of hands with controllers before them, frame by frame.
struct ControllerPlayer {
    PilotHands hands;
    RawInput raw;
    Settings settings;
    Actions asked;  // in the last frame

    explicit ControllerPlayer(const ControllerReading& first) {
        settings.up_key_pushes = true;
        connect(first);
    }
    void connect(const ControllerReading& one) {
        raw.controllers.at[static_cast<std::size_t>(raw.controllers.count++)] = one;
    }
    ControllerReading& at(std::size_t i = 0) { return raw.controllers.at[i]; }

    void frame() {
        raw.wall_s += frame_s;
        asked = read_input(hands, raw, settings, 3).actions;
        for (ControllerReading& one : raw.controllers.at) one.pressed = 0;
        raw.pressed.fill(false);
    }
    void pass(double seconds) {
        for (double t = 0; t < seconds - 1e-9; t += frame_s) frame();
    }
    void give(int axis, double value) {
        at().axes[static_cast<std::size_t>(axis)] = value;
        frame();
    }
    void press(int button) {
        at().buttons |= 1u << button;
        at().pressed |= 1u << button;
        frame();
    }
    void let_go(int button) {
        at().buttons &= ~(1u << button);
        frame();
    }
    void key(Key key, bool down) {
        raw.held[static_cast<std::size_t>(key)] = down;
        raw.pressed[static_cast<std::size_t>(key)] = down;
        frame();
    }
};

}  // namespace slopewise::test
