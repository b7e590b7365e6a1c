#include "ui/controller_book.h"

#include <algorithm>
#include <cctype>
#include <cmath>

#include "base/interpolate.h"

namespace slopewise {
namespace {

// The last hundredths of the travel at either end count as its end, which a worn device never quite gives.
constexpr double lever_end = 0.01, stick_end = 0.02;

bool name_holds(const ControllerName& name, std::string_view part) {
    const std::string_view words = words_of(name);
    const auto same = [](char a, char b) { return std::tolower(static_cast<unsigned char>(a)) == b; };
    return std::search(words.begin(), words.end(), part.begin(), part.end(), same) != words.end();
}

void put_axis(ControllerSetting& setting, int axis, AxisDoes does, bool inverted = false) {
    if (axis < 0 || axis >= most_axes) return;
    setting.axes[static_cast<std::size_t>(axis)].does = does;
    setting.axes[static_cast<std::size_t>(axis)].inverted = inverted;
}

// "Standard gamepad" of the W3C's Gamepad recommendation, section "Remapping" (its numbers from memory): axes
// 1 and 3 are the left and the right stick up and down, -1 up; buttons 0-3 the right cluster from below
// clockwise by pairs (bottom, right, left, top), 4 and 5 the front's upper left and right, 8 and 9 left and
// right of the centre, 12 and 13 the left cluster's top and bottom.
void put_gamepad(ControllerSetting& setting) {
    put_axis(setting, 1, AxisDoes::stick);
    put_axis(setting, 3, AxisDoes::throttle_rate, true);
    setting.buttons[0] = ButtonDoes::path_help;
    setting.buttons[1] = ButtonDoes::close_throttle;
    setting.buttons[2] = ButtonDoes::look_in;
    setting.buttons[3] = ButtonDoes::go_around;
    setting.buttons[4] = ButtonDoes::flap_up;
    setting.buttons[5] = ButtonDoes::flap_down;
    setting.buttons[8] = ButtonDoes::exchange;
    setting.buttons[9] = ButtonDoes::pause;
    setting.buttons[12] = ButtonDoes::trim_down;  // up the pad is forward, as with the stick
    setting.buttons[13] = ButtonDoes::trim_up;
}

// Axis 1 fore and aft, back positive, the last axis a lever with its forward end negative: common practice of
// sticks and yokes, no source.
void put_stick(ControllerSetting& setting, const ControllerReading& device) {
    const int own_axes = device.axis_count - device.hat_axes;
    put_axis(setting, 1, AxisDoes::stick);
    if (own_axes > 2) put_axis(setting, own_axes - 1, AxisDoes::throttle, true);
    if (device.hat_axes >= 2) put_axis(setting, own_axes + 1, AxisDoes::trim_rate);  // hat down: nose up
    setting.buttons[0] = ButtonDoes::path_help;
    setting.buttons[1] = ButtonDoes::pause;
    setting.buttons[2] = ButtonDoes::flap_up;
    setting.buttons[3] = ButtonDoes::flap_down;
}

}  // namespace

const std::array<std::string_view, 7> axis_words{
    "nothing",          "stick",     "throttle", "throttle, faster or slower", "trim wheel",
    "trim, up or down", "flap lever"};
const std::array<std::string_view, 11> button_words{"nothing",
                                                    "flap down a step",
                                                    "flap up a step",
                                                    "hold: trim nose up",
                                                    "hold: trim nose down",
                                                    "go around",
                                                    "close the throttle",
                                                    "pause",
                                                    "hold: path help",
                                                    "hold: look at the panel",
                                                    "hand over / take control"};

bool springs_back(AxisDoes does) {
    return does == AxisDoes::stick || does == AxisDoes::throttle_rate || does == AxisDoes::trim_rate;
}

double shaped(const AxisSetting& axis, double raw) {
    if (std::isnan(raw)) return raw;
    if (!springs_back(axis.does)) {
        const double travel = (raw - axis.least) / (axis.greatest - axis.least);
        const double share = clamp((travel - lever_end) / (1.0 - 2.0 * lever_end), 0.0, 1.0);
        return axis.inverted ? 1.0 - share : share;
    }
    const double side = raw < axis.centre ? axis.centre - axis.least : axis.greatest - axis.centre;
    const double room = side * (1.0 - stick_end);
    const double off = clamp((raw - axis.centre) / room, -1.0, 1.0) * (axis.inverted ? -1.0 : 1.0);
    const double size = std::abs(off);
    if (size <= axis.dead_zone) return 0.0;
    const double beyond = (size - axis.dead_zone) / (1.0 - axis.dead_zone);
    return std::copysign((1.0 - axis.expo) * beyond + axis.expo * beyond * beyond * beyond, off);
}

ControllerSetting usual_setting(const ControllerReading& device) {
    ControllerSetting setting;
    setting.id = device.id;
    setting.name = device.name;
    // What says that it is no stick is not flown as one.
    const bool has_stick = name_holds(device.name, "stick") || name_holds(device.name, "yoke");
    if (device.gamepad) put_gamepad(setting);
    else if (name_holds(device.name, "pedal") || name_holds(device.name, "rudder")) return setting;
    else if (!has_stick && (name_holds(device.name, "throttle") || name_holds(device.name, "quadrant")))
        put_axis(setting, 0, AxisDoes::throttle, true);
    else put_stick(setting, device);
    return setting;
}

ControllerSetting setting_of(const ControllerBook& book, const ControllerReading& device) {
    for (const ControllerSetting& one : book.devices)
        if (one.id == device.id) return one;
    return usual_setting(device);
}

bool is_kept(const ControllerBook& book, const ControllerId& id) {
    return std::ranges::any_of(book.devices, [&](const ControllerSetting& one) { return one.id == id; });
}

void keep_setting(ControllerBook& book, const ControllerSetting& setting) {
    forget_setting(book, setting.id);
    if (book.devices.size() >= most_kept_controllers) book.devices.erase(book.devices.begin());
    book.devices.push_back(setting);
}

void forget_setting(ControllerBook& book, const ControllerId& id) {
    std::erase_if(book.devices, [&](const ControllerSetting& one) { return one.id == id; });
}

}  // namespace slopewise
