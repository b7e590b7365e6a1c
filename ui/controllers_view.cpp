#include "ui/controllers_view.h"

#include <cmath>

#include "ui/format.h"

namespace slopewise {
namespace {

using Step = CalibrationStep;

std::string step_words(Step step) {
    switch (step) {
    case Step::none: return "";
    case Step::let_go:
        return "Move the stick or yoke about, then let go of it, so that it stands at its centre.";
    case Step::pull: return "Pull it fully back towards you.";
    case Step::push: return "Push it fully forward.";
    case Step::close_lever: return "Close the throttle lever. Where there is none, leave this out.";
    case Step::open_lever: return "Open the throttle lever fully.";
    }
    return "";
}

std::string axis_name(const ControllerReading& device, int axis) {
    const int own = device.axis_count - device.hat_axes;
    if (axis < own) return "Axis " + std::to_string(axis + 1);
    const std::string hat = device.hat_axes > 2 ? "Hat " + std::to_string((axis - own) / 2 + 1) : "Hat";
    return hat + ((axis - own) % 2 == 0 ? ", left and right" : ", up and down");
}

template <std::size_t count>
void put_choices(const std::array<std::string_view, count>& words, std::vector<std::string>& choices) {
    if (choices.empty()) choices.assign(words.begin(), words.end());
}

void axis_view(const ControllerDesk& desk, const ControllerReading& device, const AxisSetting& axis, int i,
               ControllersView::Axis& view) {
    const auto at = static_cast<std::size_t>(i);
    view.name = axis_name(device, i);
    view.chosen = static_cast<int>(axis.does);
    view.springs = springs_back(axis.does);
    view.stays = !view.springs && axis.does != AxisDoes::nothing;
    view.inverted = axis.inverted;
    view.dead_zone = axis.dead_zone;
    view.expo = axis.expo;
    view.told = !std::isnan(device.axes[at]);
    view.raw = view.told ? device.axes[at] : 0.0;
    view.shaped = view.told ? shaped(axis, device.axes[at]) : 0.0;
    view.raw_trace = desk.raw_trace[at];
    view.shaped_trace = desk.shaped_trace[at];
}

void device_view(const ControllerDesk& desk, const ControllerReading& device,
                 const ControllerSetting& setting, ControllersView& view) {
    view.axes.resize(static_cast<std::size_t>(device.axis_count));
    for (int i = 0; i < device.axis_count; ++i)
        axis_view(desk, device, setting.axes[static_cast<std::size_t>(i)], i,
                  view.axes[static_cast<std::size_t>(i)]);
    view.buttons.clear();
    for (int i = 0; i < device.button_count; ++i)
        view.buttons.push_back({"Button " + std::to_string(i + 1),
                                static_cast<int>(setting.buttons[static_cast<std::size_t>(i)]),
                                (device.buttons >> i & 1u) != 0});
}

void calibration_view(const ControllerDesk& desk, ControllersView& view) {
    const Calibration& c = desk.calibration;
    view.step = step_words(c.step);
    view.step_count = view.found = "";
    view.last_step = c.step == Step::open_lever;
    if (c.step == Step::none) return;
    view.step_count = "Step " + std::to_string(static_cast<int>(c.step)) + " of 5";
    const int axis = axis_moved_most(desk);
    if (axis >= 0 && c.step != Step::let_go && c.step != Step::close_lever)
        view.found = view.axes[static_cast<std::size_t>(axis)].name + " moves most.";
}

std::string shape_text(const ControllersView::Axis& axis) {
    std::string text = axis.inverted ? ", inverted" : "";
    if (axis.springs)
        text += ", dead zone " + percent_words(axis.dead_zone) + ", expo " + number_words(axis.expo, 1);
    return text;
}

std::string live_text(const ControllersView::Axis& axis) {
    if (!axis.told) return axis.name + ": not moved yet.";
    std::string text = axis.name + " gives " + percent_words(axis.raw);
    if (axis.springs || axis.stays) text += ", flies " + percent_words(axis.shaped);
    return text + ".";
}

}  // namespace

void controllers_view(const App& app, ControllersView& view) {
    const ControllerDesk& desk = app.controllers;
    put_choices(axis_words, view.axis_choices);
    put_choices(button_words, view.button_choices);
    view.devices.clear();
    view.device = 0;
    for (int i = 0; i < desk.now.count; ++i) {
        const ControllerReading& one = desk.now.at[static_cast<std::size_t>(i)];
        if (one.instance == desk.shown) view.device = i;
        view.devices.emplace_back(words_of(one.name));
    }
    view.news = desk.news;
    const ControllerReading* device = shown_controller(desk);
    if (device == nullptr) {
        view.axes.clear();
        view.buttons.clear();
        view.step = view.step_count = view.found = "";
        view.kept = view.last_step = false;
        view.advice =
            "No controller is connected. Plug it in, then press one of its buttons: a browser shows a "
            "controller only after that. Gamepads, sticks, yokes and throttle levers fly as they come. Here "
            "each can be measured step by step: what its axes and buttons do, dead zone, curve and "
            "direction, kept for its kind.";
        return;
    }
    view.kept = is_kept(app.settings.controllers, device->id);
    view.advice = view.kept ? "As you set it. Kept on this device, for every controller of this kind."
                            : "As it comes. What you change is kept for every controller of this kind.";
    const bool calibrates = desk.calibration.step != Step::none;
    device_view(desk, *device,
                calibrates ? desk.calibration.setting : setting_of(app.settings.controllers, *device), view);
    calibration_view(desk, view);
}

std::string controllers_text(const ControllersView& view) {
    std::string text = "Stick and levers.\n";
    if (!view.news.empty()) text += view.news + "\n";
    if (view.devices.empty()) return text + view.advice + "\n";
    for (std::size_t i = 0; i < view.devices.size(); ++i)
        text +=
            (static_cast<int>(i) == view.device ? "Shown: " : "Also connected: ") + view.devices[i] + "\n";
    if (!view.step.empty()) {
        text += view.step_count + ": " + view.step + "\n";
        if (!view.found.empty()) text += view.found + "\n";
    } else {
        text += view.advice + "\n";
    }
    for (const ControllersView::Axis& axis : view.axes)
        text += axis.name + ": " + view.axis_choices[static_cast<std::size_t>(axis.chosen)] +
                shape_text(axis) + ".\n";
    for (const ControllersView::Button& button : view.buttons)
        text += button.name + ": " + view.button_choices[static_cast<std::size_t>(button.chosen)] + ".\n";
    return text;
}

std::string controllers_live_text(const ControllersView& view) {
    std::string text;
    for (const ControllersView::Axis& axis : view.axes) text += live_text(axis) + "\n";
    for (const ControllersView::Button& button : view.buttons)
        if (button.down) text += button.name + " is pressed.\n";
    return text;
}

}  // namespace slopewise
