// The steps that find out which axis is the stick, which the lever, and how far each goes.
#include <algorithm>
#include <cmath>

#include "ui/controller_desk.h"

namespace slopewise {
namespace {

using Step = CalibrationStep;

// A quarter of half the travel: more than a hand does by chance on another axis, less than a short lever
// gives.
constexpr double least_move = 0.25;

std::size_t at(int axis) { return static_cast<std::size_t>(axis); }

double furthest(const Calibration& c, int axis) {
    const double up = c.highest[at(axis)] - c.begun[at(axis)], down = c.begun[at(axis)] - c.lowest[at(axis)];
    return up >= down ? c.highest[at(axis)] : c.lowest[at(axis)];
}

// Not a number for an axis that the device has not told yet.
double moved(const Calibration& c, int axis) { return std::abs(furthest(c, axis) - c.begun[at(axis)]); }

void begin_step(ControllerDesk& desk, Step step) {
    Calibration& c = desk.calibration;
    c.step = step;
    desk.news.clear();
    const ControllerReading& device = *shown_controller(desk);
    c.begun = device.axes;
    // The stick is measured from where it rests, though it may be held over while the step changes.
    if (step == Step::push || step == Step::pull) c.begun = c.rest;
    c.lowest = c.highest = c.begun;
}

void do_nothing_else(ControllerSetting& setting, std::initializer_list<AxisDoes> what) {
    for (AxisSetting& axis : setting.axes)
        if (std::ranges::find(what, axis.does) != what.end()) axis.does = AxisDoes::nothing;
}

void set_stick(Calibration& c, double pushed) {
    const double rest = c.rest[at(c.stick)];
    do_nothing_else(c.setting, {AxisDoes::stick});
    AxisSetting& axis = c.setting.axes[at(c.stick)];
    axis.does = AxisDoes::stick;
    axis.inverted = c.pulled < rest;
    axis.centre = rest;
    axis.least = std::min(c.pulled, pushed);
    axis.greatest = std::max(c.pulled, pushed);
    c.set_anything = true;
}

void set_lever(Calibration& c, int lever) {
    const double closed = c.begun[at(lever)], open = furthest(c, lever);
    do_nothing_else(c.setting, {AxisDoes::throttle, AxisDoes::throttle_rate});
    AxisSetting& axis = c.setting.axes[at(lever)];
    axis.does = AxisDoes::throttle;
    axis.inverted = open < closed;
    axis.least = std::min(open, closed);
    axis.greatest = std::max(open, closed);
    axis.centre = (open + closed) / 2.0;
    c.lever = lever;
    c.set_anything = true;
}

std::string axis_name(int axis) { return "axis " + std::to_string(axis + 1); }

// Keeps what was found.
bool finish(ControllerDesk& desk, ControllerBook& book) {
    const Calibration done = desk.calibration;
    desk.calibration = {};
    if (!done.set_anything) {
        desk.news = "Nothing was changed.";
        return false;
    }
    keep_setting(book, done.setting);
    desk.news = "Kept for " + std::string(words_of(done.setting.name)) + ": ";
    if (done.stick >= 0) desk.news += axis_name(done.stick) + " is the stick";
    if (done.stick >= 0 && done.lever >= 0) desk.news += ", ";
    if (done.lever >= 0) desk.news += axis_name(done.lever) + " is the throttle";
    desk.news += ".";
    return true;
}

void stay(ControllerDesk& desk, std::string words) { desk.news = std::move(words); }

bool after_pull(ControllerDesk& desk, bool skip) {
    Calibration& c = desk.calibration;
    if (skip) {
        begin_step(desk, Step::close_lever);
        return false;
    }
    const int axis = axis_moved_most(desk);
    if (axis < 0) {
        stay(desk, "Nothing has moved far enough yet.");
        return false;
    }
    c.stick = axis;
    c.rest[at(axis)] = c.begun[at(axis)];
    c.pulled = furthest(c, axis);
    begin_step(desk, Step::push);
    return false;
}

bool after_push(ControllerDesk& desk, bool skip) {
    Calibration& c = desk.calibration;
    const double rest = c.rest[at(c.stick)];
    // Left out, the stick is taken to go as far forward as it comes back.
    double pushed = std::clamp(2.0 * rest - c.pulled, -1.0, 1.0);
    if (!skip) pushed = c.pulled > rest ? c.lowest[at(c.stick)] : c.highest[at(c.stick)];
    if (std::abs(pushed - rest) < least_move) {
        stay(desk, "The stick has not moved far enough the other way yet.");
        return false;
    }
    set_stick(c, pushed);
    begin_step(desk, Step::close_lever);
    return false;
}

}  // namespace

int axis_moved_most(const ControllerDesk& desk) {
    const Calibration& c = desk.calibration;
    const ControllerReading* device = shown_controller(desk);
    if (device == nullptr) return -1;
    int most = -1;
    for (int i = 0; i < device->axis_count - device->hat_axes; ++i) {
        if (c.step == Step::open_lever && i == c.stick) continue;
        if (moved(c, i) >= least_move && (most < 0 || moved(c, i) > moved(c, most))) most = i;
    }
    return most;
}

void begin_calibration(ControllerDesk& desk, const ControllerBook& book) {
    const ControllerReading* device = shown_controller(desk);
    if (device == nullptr) return;
    desk.calibration = {};
    desk.calibration.instance = device->instance;
    desk.calibration.setting = setting_of(book, *device);
    begin_step(desk, Step::let_go);
}

void follow_calibration(ControllerDesk& desk) {
    Calibration& c = desk.calibration;
    const ControllerReading* device = shown_controller(desk);
    if (device == nullptr || device->instance != c.instance) {
        desk.calibration = {};
        desk.news += " Nothing was changed.";
        return;
    }
    for (int i = 0; i < device->axis_count; ++i) {
        if (std::isnan(device->axes[at(i)])) continue;
        // An axis that is told now for the first time has only begun to move.
        if (std::isnan(c.begun[at(i)]))
            c.begun[at(i)] = c.lowest[at(i)] = c.highest[at(i)] = device->axes[at(i)];
        c.lowest[at(i)] = std::min(c.lowest[at(i)], device->axes[at(i)]);
        c.highest[at(i)] = std::max(c.highest[at(i)], device->axes[at(i)]);
    }
}

bool next_calibration_step(ControllerDesk& desk, ControllerBook& book, bool skip) {
    Calibration& c = desk.calibration;
    switch (c.step) {
    case Step::none: return false;
    case Step::let_go:
        c.rest = shown_controller(desk)->axes;
        begin_step(desk, Step::pull);
        return false;
    case Step::pull: return after_pull(desk, skip);
    case Step::push: return after_push(desk, skip);
    case Step::close_lever:
        if (skip) return finish(desk, book);
        begin_step(desk, Step::open_lever);
        return false;
    case Step::open_lever: {
        const int lever = skip ? -1 : axis_moved_most(desk);
        if (!skip && lever < 0) {
            stay(desk, "Nothing has moved far enough yet.");
            return false;
        }
        if (lever >= 0) set_lever(c, lever);
        return finish(desk, book);
    }
    }
    return false;
}

void leave_calibration(ControllerDesk& desk) {
    desk.calibration = {};
    desk.news = "Nothing was changed.";
}

}  // namespace slopewise
