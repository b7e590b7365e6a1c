#include "ui/controller_input.h"

#include <algorithm>
#include <cmath>

#include "base/interpolate.h"
#include "ui/input.h"

namespace slopewise {
namespace {

constexpr double stick_wakes = 0.05;  // of the axis as it is given, from where it rested
constexpr double lever_wakes = 0.02;  // of its travel: more than a worn lever trembles
constexpr double lever_step = 0.004;  // a count of eight bits, which many levers have
constexpr double meets = 0.01;        // lever and throttle so near each other stand together
constexpr double same = 1e-9;         // what a sum of doubles may be off
constexpr double throttle_rate_ps = 0.5;
constexpr double trim_rate_ps = 0.12;  // as the trim keys
constexpr double notch_hold = 0.6;     // of a notch: further than half, so that nothing trembles between two

struct Hand {
    PilotHands& hands;
    double dt_s;
    int flap_count;
    bool stick_key;
    bool moved = false;  // something by this device
};

struct StickSum {
    double most = 0;
    bool has_say = false;
};

void read_stick(Hand& hand, ControllerMemory::Axis& memory, const AxisSetting& axis, double raw,
                StickSum& sum) {
    // A device tells of an axis when it moves first; until then it stands at its centre.
    const double at = std::isnan(raw) ? axis.centre : raw;
    if (std::isnan(memory.last) || hand.stick_key || hand.hands.mouse_has_stick) {
        memory.last = at;
        memory.has_say = false;
    }
    const double wanted = shaped(axis, at);
    if (std::abs(at - memory.last) > stick_wakes && wanted != 0.0) memory.has_say = true;
    if (!memory.has_say) return;
    sum.has_say = true;
    if (wanted != 0.0) hand.moved = true;
    if (std::abs(wanted) > std::abs(sum.most)) sum.most = wanted;
}

// How far over, once it has been at its centre.
double read_rate(Hand& hand, ControllerMemory::Axis& memory, const AxisSetting& axis, double raw) {
    const double wanted = std::isnan(raw) ? 0.0 : shaped(axis, raw);
    if (wanted == 0.0) memory.has_say = true;
    if (!memory.has_say || wanted == 0.0) return 0.0;
    hand.moved = true;
    return wanted;
}

// Moves `value`, 0 ... 1, by what the lever has moved.
void follow_lever(Hand& hand, ControllerMemory::Axis& memory, const AxisSetting& axis, double raw,
                  double& value) {
    if (std::isnan(raw)) return;
    const double at = shaped(axis, raw);
    if (std::isnan(memory.last)) memory.last = at;
    if (std::abs(value - memory.given) > same) memory.has_say = false;  // another hand has moved it since
    const double by = at - memory.last;
    const bool reaches_end = memory.has_say && by != 0.0 && (at == 0.0 || at == 1.0);
    if (std::abs(by) < (memory.has_say ? lever_step : lever_wakes) && !reaches_end) return;
    // Where they meet, whichever is behind waits for the other: nothing goes back against the hand.
    if (std::abs(value - memory.last) <= meets) value = by > 0 ? std::max(value, at) : std::min(value, at);
    else if (by > 0) value += by * (1.0 - value) / (1.0 - memory.last);
    else value += by * value / memory.last;
    memory = {memory.does, at, true, value = clamp(value, 0.0, 1.0)};
    hand.moved = true;
}

void follow_notches(Hand& hand, ControllerMemory::Axis& memory, const AxisSetting& axis, double raw) {
    if (std::isnan(raw) || hand.flap_count < 1) return;
    const double at = shaped(axis, raw) * (hand.flap_count - 1);
    if (std::isnan(memory.last)) memory.last = std::round(at);
    if (std::abs(at - memory.last) < notch_hold) return;
    memory.last = std::round(at);
    hand.hands.at.flap = static_cast<int>(memory.last);
    hand.moved = true;
}

void read_axes(Hand& hand, ControllerMemory::Device& memory, const ControllerSetting& setting,
               const ControllerReading& device, StickSum& stick) {
    ControlPositions& at = hand.hands.at;
    for (std::size_t i = 0; i < static_cast<std::size_t>(device.axis_count); ++i) {
        const AxisSetting& axis = setting.axes[i];
        const double raw = device.axes[i];
        ControllerMemory::Axis& known = memory.axes[i];
        if (known.does != axis.does) known = {axis.does};
        switch (axis.does) {
        case AxisDoes::nothing: break;
        case AxisDoes::stick: read_stick(hand, known, axis, raw, stick); break;
        case AxisDoes::throttle: follow_lever(hand, known, axis, raw, at.throttle); break;
        case AxisDoes::throttle_rate:
            at.throttle += read_rate(hand, known, axis, raw) * throttle_rate_ps * hand.dt_s;
            break;
        case AxisDoes::trim: {
            double share = (at.trim + 1.0) / 2.0;
            follow_lever(hand, known, axis, raw, share);
            if (share != (at.trim + 1.0) / 2.0) at.trim = 2.0 * share - 1.0;
            break;
        }
        case AxisDoes::trim_rate:
            at.trim += read_rate(hand, known, axis, raw) * trim_rate_ps * hand.dt_s;
            break;
        case AxisDoes::flap: follow_notches(hand, known, axis, raw); break;
        }
    }
}

template <class Use>
void each_button(const ControllerSetting& setting, const ControllerReading& device, Use use) {
    for (std::size_t i = 0; i < static_cast<std::size_t>(device.button_count); ++i) {
        const std::uint32_t bit = std::uint32_t{1} << i;
        use(setting.buttons[i], (device.buttons & bit) != 0, (device.pressed & bit) != 0);
    }
}

void read_buttons(Hand& hand, const ControllerSetting& setting, const ControllerReading& device,
                  ControllerHolds& holds) {
    ControlPositions& at = hand.hands.at;
    each_button(setting, device, [&](ButtonDoes does, bool down, bool pressed) {
        const ControlPositions before = at;
        if (does == ButtonDoes::trim_up && down) at.trim += trim_rate_ps * hand.dt_s;
        if (does == ButtonDoes::trim_down && down) at.trim -= trim_rate_ps * hand.dt_s;
        if (does == ButtonDoes::flap_down && pressed && at.flap + 1 < hand.flap_count) ++at.flap;
        if (does == ButtonDoes::flap_up && pressed && at.flap > 0) --at.flap;
        if (does == ButtonDoes::close_throttle && pressed) at.throttle = 0.0;
        if (does == ButtonDoes::path_help) holds.path_help |= down;
        if (does == ButtonDoes::look_in) holds.look_in |= down;
        hand.moved |= at.trim != before.trim || at.flap != before.flap || at.throttle != before.throttle;
        hand.moved |= does == ButtonDoes::go_around && pressed;
    });
}

}  // namespace

ControllerHolds fly_by_controllers(PilotHands& hands, const RawInput& raw, const ControllerBook& book,
                                   int flap_count, double dt_s) {
    ControllerHolds holds;
    StickSum stick;
    Hand hand{hands, dt_s, flap_count, raw.is_held(Key::up) != raw.is_held(Key::down)};
    for (std::size_t i = 0; i < static_cast<std::size_t>(raw.controllers.count); ++i) {
        const ControllerReading& device = raw.controllers.at[i];
        ControllerMemory::Device& memory = hands.controllers.at[i];
        if (memory.instance != device.instance) memory = {device.instance, {}};
        const ControllerSetting setting = setting_of(book, device);
        hand.moved = false;
        read_axes(hand, memory, setting, device, stick);
        read_buttons(hand, setting, device, holds);
        if (hand.moved) mark_controller(hands.used, device.name);
    }
    hands.controller_has_stick = stick.has_say;
    if (stick.has_say) hands.at.stick = stick.most;
    hands.at.throttle = clamp(hands.at.throttle, 0.0, 1.0);
    hands.at.trim = clamp(hands.at.trim, -1.0, 1.0);
    return holds;
}

Actions controller_actions(const ControllerReadings& readings, const ControllerBook& book,
                           bool before_class) {
    Actions actions;
    for (std::size_t i = 0; i < static_cast<std::size_t>(readings.count); ++i) {
        const ControllerReading& device = readings.at[i];
        if (device.pressed == 0) continue;
        each_button(setting_of(book, device), device, [&](ButtonDoes does, bool, bool pressed) {
            if (!pressed) return;
            if (does == ButtonDoes::go_around) actions.emplace_back(GoAround{});
            if (does == ButtonDoes::exchange) actions.emplace_back(ExchangeControls{});
            if (does != ButtonDoes::pause) return;
            if (before_class) actions.emplace_back(FreezeOrRun{});
            else actions.emplace_back(TogglePause{});
        });
    }
    return actions;
}

}  // namespace slopewise
