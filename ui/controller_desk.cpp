#include "ui/controller_desk.h"

#include <algorithm>
#include <cmath>

namespace slopewise {
namespace {

constexpr double sample_s = 1.0 / 30.0;
constexpr std::size_t most_samples = 180;  // six seconds

bool is_among(const ControllerReadings& readings, std::int32_t instance) {
    for (int i = 0; i < readings.count; ++i)
        if (readings.at[static_cast<std::size_t>(i)].instance == instance) return true;
    return false;
}

// Of those in `some` that are not among the `others`; says so when there is one.
bool tell_others(const ControllerReadings& some, const ControllerReadings& others, std::string_view what,
                 std::string& news) {
    bool any = false;
    for (int i = 0; i < some.count; ++i) {
        const ControllerReading& one = some.at[static_cast<std::size_t>(i)];
        if (is_among(others, one.instance)) continue;
        news.assign(what).append(words_of(one.name)).append(".");
        any = true;
    }
    return any;
}

void push(std::vector<float>& trace, double value) {
    trace.reserve(most_samples);
    if (trace.size() >= most_samples) trace.erase(trace.begin());
    trace.push_back(static_cast<float>(value));
}

void sample(ControllerDesk& desk, const ControllerBook& book) {
    const ControllerReading* device = shown_controller(desk);
    if (device == nullptr) return;
    const ControllerSetting setting = setting_of(book, *device);
    for (std::size_t i = 0; i < static_cast<std::size_t>(device->axis_count); ++i) {
        const AxisSetting& axis = setting.axes[i];
        const double raw = device->axes[i], value = shaped(axis, raw);
        if (std::isnan(raw)) continue;
        push(desk.raw_trace[i], raw);
        push(desk.shaped_trace[i], springs_back(axis.does) ? value : 2.0 * value - 1.0);
    }
}

void clear_traces(ControllerDesk& desk) {
    for (std::vector<float>& trace : desk.raw_trace) trace.clear();
    for (std::vector<float>& trace : desk.shaped_trace) trace.clear();
}

}  // namespace

const ControllerReading* shown_controller(const ControllerDesk& desk) {
    for (int i = 0; i < desk.now.count; ++i) {
        const ControllerReading& one = desk.now.at[static_cast<std::size_t>(i)];
        if (one.instance == desk.shown) return &one;
    }
    return desk.now.count > 0 ? &desk.now.at[0] : nullptr;
}

bool follow_controllers(ControllerDesk& desk, const ControllerReadings& now, const ControllerBook& book,
                        double wall_s, bool sheet_open) {
    tell_others(now, desk.now, "Connected: ", desk.news);
    const bool gone = tell_others(desk.now, now, "Unplugged: ", desk.news);
    desk.now = now;
    const ControllerReading* device = shown_controller(desk);
    const std::int32_t shown = device != nullptr ? device->instance : -1;
    if (shown != desk.shown) clear_traces(desk);
    desk.shown = shown;
    if (desk.calibration.step != CalibrationStep::none) follow_calibration(desk);
    if (!sheet_open || wall_s - desk.sampled_s < sample_s) return gone;
    desk.sampled_s = wall_s;
    sample(desk, book);
    return gone;
}

}  // namespace slopewise
