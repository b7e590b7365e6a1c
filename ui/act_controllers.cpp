// What is asked of sticks, yokes and levers.
#include <algorithm>

#include "ui/act.h"

namespace slopewise {
namespace {

using Wish = DoWithController::Wish;

template <class Entry, std::size_t count>
Entry* entry(std::array<Entry, count>& entries, int which) {
    return which >= 0 && which < static_cast<int>(count) ? &entries[static_cast<std::size_t>(which)]
                                                         : nullptr;
}

// Buttons are counted on behind the axes.
void set_does(ControllerSetting& setting, int which, int choice) {
    AxisSetting* axis = entry(setting.axes, which);
    ButtonDoes* button = entry(setting.buttons, which - most_axes);
    if (axis != nullptr && choice >= 0 && choice < static_cast<int>(axis_words.size()))
        axis->does = static_cast<AxisDoes>(choice);
    if (button != nullptr && choice >= 0 && choice < static_cast<int>(button_words.size()))
        *button = static_cast<ButtonDoes>(choice);
}

void change(App& app, const DoWithController& wish, Host& host) {
    const ControllerReading* device = shown_controller(app.controllers);
    if (device == nullptr) return;
    ControllerSetting setting = setting_of(app.settings.controllers, *device);
    AxisSetting* axis = entry(setting.axes, wish.which);
    if (wish.wish == Wish::set_axis) set_does(setting, wish.which, static_cast<int>(wish.amount));
    if (wish.wish == Wish::invert && axis != nullptr) axis->inverted = !axis->inverted;
    if (wish.wish == Wish::set_dead_zone && axis != nullptr)
        axis->dead_zone = std::clamp(wish.amount, 0.0, most_dead_zone);
    if (wish.wish == Wish::set_expo && axis != nullptr) axis->expo = std::clamp(wish.amount, 0.0, 1.0);
    keep_setting(app.settings.controllers, setting);
    keep_settings(app, host);
}

void choose(ControllerDesk& desk, int which) {
    if (which < 0 || which >= desk.now.count) return;
    desk.shown = desk.now.at[static_cast<std::size_t>(which)].instance;
    for (std::size_t i = 0; i < most_axes; ++i) {
        desk.raw_trace[i].clear();
        desk.shaped_trace[i].clear();
    }
}

void forget(App& app, Host& host) {
    const ControllerReading* device = shown_controller(app.controllers);
    if (device == nullptr || !is_kept(app.settings.controllers, device->id)) return;
    forget_setting(app.settings.controllers, device->id);
    app.controllers.news = std::string(words_of(device->name)) + " is as it comes again.";
    keep_settings(app, host);
}

}  // namespace

void act(App& app, const OpenControllers&, Host&) {
    app.controllers.calibration = {};
    app.screen = Screen::controllers;
}
// While a calibration runs, the way back leads out of that alone.
void act(App& app, const CloseControllers&, Host&) {
    if (app.controllers.calibration.step != CalibrationStep::none) return leave_calibration(app.controllers);
    app.screen = Screen::screen_and_help;
}
void act(App& app, const DoWithController& wish, Host& host) {
    ControllerDesk& desk = app.controllers;
    switch (wish.wish) {
    case Wish::choose: return choose(desk, wish.which);
    case Wish::calibrate: return begin_calibration(desk, app.settings.controllers);
    case Wish::next_step:
        if (next_calibration_step(desk, app.settings.controllers, wish.which != 0)) keep_settings(app, host);
        return;
    case Wish::leave: return leave_calibration(desk);
    case Wish::forget: return forget(app, host);
    case Wish::set_axis:
    case Wish::invert:
    case Wish::set_dead_zone:
    case Wish::set_expo: return change(app, wish, host);
    }
}

}  // namespace slopewise
