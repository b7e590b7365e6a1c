// What the controllers that are connected give now: sticks, yokes, levers, gamepads. Of fixed size, since it
// is read each frame.
#pragma once

#include <array>
#include <cstdint>
#include <string_view>

namespace slopewise {

inline constexpr int most_controllers = 4, most_axes = 12, most_buttons = 32;

using ControllerId = std::array<char, 40>;    // 32 hexadecimal digits, zero-ended
using ControllerName = std::array<char, 64>;  // UTF-8, zero-ended

struct ControllerReading {
    ControllerId id{};  // the same for the same kind of device
    ControllerName name{};
    std::int32_t instance = -1;  // this very device, as long as it is connected
    bool gamepad = false;        // its axes and buttons stand as those of the W3C's standard gamepad
    int axis_count = 0, hat_axes = 0, button_count = 0;
    // Each -1 ... +1; not a number as long as the device has not told it. The last `hat_axes` of them are
    // hats, two each, right and down positive.
    std::array<double, most_axes> axes{};
    std::uint32_t buttons = 0;  // a bit each: is down
    std::uint32_t pressed = 0;  // went down since the last frame
};

struct ControllerReadings {
    int count = 0;
    std::array<ControllerReading, most_controllers> at{};
};

// A name from outside: whole letters of UTF-8, nothing that cannot be seen, never empty.
ControllerName controller_name(std::string_view given);

template <std::size_t size>
std::string_view words_of(const std::array<char, size>& text) {
    return {text.data()};
}

}  // namespace slopewise
