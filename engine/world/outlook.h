// How the outside looks: the light of the hour, what is lit on the ground, how far one sees, cloud and rain.
#pragma once

#include <array>
#include <string_view>

#include "world/visibility.h"

namespace slopewise {

enum class Daylight { day, low_sun, dusk, night };

inline constexpr std::array<std::string_view, 4> daylight_names{"day", "low_sun", "dusk", "night"};

struct Outlook {
    Daylight light = Daylight::day;
    bool ground_lights = true;      // houses, roads and villages lit; without them the night is a black hole
    double visibility_m = 30000.0;  // meteorological, 1 to 50 km
    bool overcast = false;          // a closed, even cloud above the path: no sun, no shadows
    bool rain = false;

    friend bool operator==(const Outlook&, const Outlook&) = default;
};

// The brightness of the background that a lamp is seen against. A low sun leaves the day's.
constexpr Background background_of(Daylight light) {
    if (light == Daylight::night) return Background::night;
    return light == Daylight::dusk ? Background::dusk : Background::day;
}

}  // namespace slopewise
