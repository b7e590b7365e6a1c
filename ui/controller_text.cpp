// What is set for controllers, as text in the settings.
#include <algorithm>
#include <cmath>

#include "data/fields.h"
#include "ui/controller_book.h"

namespace slopewise {
namespace {

constexpr std::array<std::string_view, 7> axis_keys{"nothing", "stick",     "throttle", "throttle_rate",
                                                    "trim",    "trim_rate", "flap"};
constexpr std::array<std::string_view, 11> button_keys{"nothing",   "flap_down", "flap_up",        "trim_up",
                                                       "trim_down", "go_around", "close_throttle", "pause",
                                                       "path_help", "look_in",   "exchange"};

constexpr std::size_t most_buttons_bytes = most_buttons * 16;

// The least travel that a measured axis has on either side, as the device gives it.
constexpr double least_travel = 0.05;

std::string number_field(std::string_view key, double value) {
    return ", \"" + std::string(key) + "\": " + number_text(std::round(value * 1e4) / 1e4);
}

std::string axis_json(const AxisSetting& axis) {
    return "{\"does\": \"" + std::string(axis_keys[static_cast<std::size_t>(axis.does)]) +
           "\", \"inverted\": " + (axis.inverted ? "true" : "false") + number_field("least", axis.least) +
           number_field("centre", axis.centre) + number_field("greatest", axis.greatest) +
           number_field("dead_zone", axis.dead_zone) + number_field("expo", axis.expo) + "}";
}

// A word a button, without those at the end that do nothing.
std::string buttons_json(const ControllerSetting& setting) {
    std::size_t count = setting.buttons.size();
    while (count > 1 && setting.buttons[count - 1] == ButtonDoes::nothing) --count;
    std::string text;
    for (std::size_t i = 0; i < count; ++i)
        text.append(i == 0 ? "" : " ").append(button_keys[static_cast<std::size_t>(setting.buttons[i])]);
    return "\"" + text + "\"";
}

std::string setting_json(const ControllerSetting& setting) {
    std::size_t count = setting.axes.size();
    while (count > 0 && setting.axes[count - 1] == AxisSetting{}) --count;
    std::string axes;
    for (std::size_t i = 0; i < count; ++i) axes += (i == 0 ? "" : ", ") + axis_json(setting.axes[i]);
    return "{\"id\": " + json_string(words_of(setting.id)) +
           ", \"name\": " + json_string(words_of(setting.name)) + ", \"axes\": [" + axes +
           "], \"buttons\": " + buttons_json(setting) + "}";
}

bool is_measured(const AxisSetting& axis) {
    return axis.centre - axis.least >= least_travel && axis.greatest - axis.centre >= least_travel;
}

AxisSetting read_axis(Fields& fields) {
    const AxisSetting usual;
    AxisSetting axis;
    axis.does = static_cast<AxisDoes>(fields.one_of_or("does", 0, axis_keys));
    axis.inverted = fields.flag_or("inverted", usual.inverted);
    axis.least = fields.number_or("least", usual.least, {-1, 1});
    axis.centre = fields.number_or("centre", usual.centre, {-1, 1});
    axis.greatest = fields.number_or("greatest", usual.greatest, {-1, 1});
    axis.dead_zone = fields.number_or("dead_zone", usual.dead_zone, {0, most_dead_zone});
    axis.expo = fields.number_or("expo", usual.expo, {0, 1});
    fields.finish();
    if (is_measured(axis)) return axis;
    fields.report("centre", "does not lie between least and greatest", "0.05 at least on either side");
    axis.least = usual.least;
    axis.centre = usual.centre;
    axis.greatest = usual.greatest;
    return axis;
}

void read_buttons(Fields& fields, ControllerSetting& setting) {
    const std::string text = fields.text_or("buttons", "nothing", most_buttons_bytes);
    std::size_t button = 0;
    for (std::size_t at = 0; at < text.size() && button < setting.buttons.size(); ++button) {
        const std::size_t end = std::min(text.find(' ', at), text.size());
        const std::string word = text.substr(at, end - at);
        const auto found = std::ranges::find(button_keys, word);
        if (found == button_keys.end())
            fields.report("buttons", "has \"" + word + "\"", "words for what a button does");
        else setting.buttons[button] = static_cast<ButtonDoes>(found - button_keys.begin());
        at = end + 1;
    }
}

bool is_id(std::string_view id) {
    const auto digit = [](char c) { return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f'); };
    return !id.empty() && std::ranges::all_of(id, digit);
}

}  // namespace

std::string controllers_json(const ControllerBook& book) {
    std::string text;
    for (const ControllerSetting& one : book.devices) text += (text.empty() ? "" : ", ") + setting_json(one);
    return "[" + text + "]";
}

ControllerBook read_controllers(Fields& settings) {
    ControllerBook book;
    for (Fields& fields : settings.list("controllers", 0, most_kept_controllers)) {
        ControllerSetting setting;
        const std::string id = fields.text("id", setting.id.size() - 1);
        if (!id.empty() && !is_id(id)) fields.report("id", "is \"" + id + "\"", "hexadecimal digits");
        std::ranges::copy(id, setting.id.begin());
        setting.name = controller_name(fields.text_or("name", "", setting.name.size() - 1));
        std::size_t axis = 0;
        if (fields.has("axes"))
            for (Fields& one : fields.list("axes", 0, most_axes)) setting.axes[axis++] = read_axis(one);
        read_buttons(fields, setting);
        fields.finish();
        if (is_id(id)) keep_setting(book, setting);
    }
    return book;
}

}  // namespace slopewise
