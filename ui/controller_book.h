// What each axis and button of a controller does, for each kind of device by its id: as it comes, as the user
// set it, and as text in the settings.
#pragma once

#include <array>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.h"
#include "ui/controller.h"

namespace slopewise {

class Fields;

enum class AxisDoes {
    nothing,
    stick,          // fore and aft; springs back to its centre
    throttle,       // a lever that stays where it is put
    throttle_rate,  // springs back: held over, the throttle goes on moving
    trim,           // a wheel that stays where it is put
    trim_rate,      // springs back, such as a hat
    flap,           // a lever whose travel is parted into as many notches as there are flap settings
};

enum class ButtonDoes {
    nothing,
    flap_down,
    flap_up,
    trim_up,    // the nose; as long as it is held
    trim_down,  // the nose; as long as it is held
    go_around,
    close_throttle,
    pause,
    path_help,  // as long as it is held
    look_in,    // at the panel, as long as it is held
    exchange,   // hand over control, or take it
};

// As the user reads them, in the order of the enumerations.
extern const std::array<std::string_view, 7> axis_words;
extern const std::array<std::string_view, 11> button_words;

inline constexpr double most_dead_zone = 0.3;

// Dead zone and expo are common practice, no source: 4-8 % either side of the centre, where a cheap spring
// leaves it, and a curve that is gentle there.
struct AxisSetting {
    AxisDoes does = AxisDoes::nothing;
    bool inverted = false;
    double least = -1, centre = 0, greatest = 1;  // as the device gives them
    double dead_zone = 0.06;                      // share of the travel either side of the centre
    double expo = 0.4;                            // k of (1 - k) x + k x^3

    friend bool operator==(const AxisSetting&, const AxisSetting&) = default;
};

struct ControllerSetting {
    ControllerId id{};
    ControllerName name{};
    std::array<AxisSetting, most_axes> axes{};
    std::array<ButtonDoes, most_buttons> buttons{};

    friend bool operator==(const ControllerSetting&, const ControllerSetting&) = default;
};

inline constexpr std::size_t most_kept_controllers = 8;

struct ControllerBook {
    std::vector<ControllerSetting> devices;  // the one set last stands last

    friend bool operator==(const ControllerBook&, const ControllerBook&) = default;
};

// Whether what it moves springs back to a centre, and so has a dead zone and expo.
bool springs_back(AxisDoes does);

// What is made of an axis's reading: where it springs back, -1 ... +1 from its centre, positive pulling the
// stick, opening the throttle, trimming nose up; where it stays, 0 ... 1 of its travel, positive opening the
// throttle, trimming nose up, letting the flap down. Not a number as long as the reading is none.
double shaped(const AxisSetting& axis, double raw);

// What an unknown device does at once, with no calibration.
ControllerSetting usual_setting(const ControllerReading& device);

// The user's own, or the usual one.
ControllerSetting setting_of(const ControllerBook& book, const ControllerReading& device);
bool is_kept(const ControllerBook& book, const ControllerId& id);

// Of more than eight devices the one set longest ago is forgotten.
void keep_setting(ControllerBook& book, const ControllerSetting& setting);
void forget_setting(ControllerBook& book, const ControllerId& id);

// A list for the settings' "controllers", and back. What is bad has its default alone; a device whose id is
// bad is left out.
std::string controllers_json(const ControllerBook& book);
ControllerBook read_controllers(Fields& settings);

}  // namespace slopewise
