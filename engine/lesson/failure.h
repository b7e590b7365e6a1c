// Something that fails during a lesson, when and how.
#pragma once

#include <array>
#include <string_view>

namespace slopewise {

struct Failure {
    enum class Kind {
        airspeed_blank,  // the airspeed indicator shows nothing
        airspeed_stuck,  // it shows what it showed then
        flap_stuck,      // the flap stays where it is
        power_partial,   // `amount` of the power is left
        power_lost,      // none is left
        light_out,       // one slope-light unit
        light_misaimed,  // one unit set `amount` too high (radians; negative: too low)
        lights_out,      // all of them
        condensation,    // on the lenses, to the degree `amount`
    };
    enum class Trigger { time, distance, height };

    Kind kind = Kind::airspeed_blank;
    Trigger trigger = Trigger::time;
    double at =
        0.0;  // s since the start; or, falling, m to the aim point, or m of the wheels above the threshold
    double amount = 0.0;
    int unit = 0;  // of the lights, in their order
};

// Their names, in the order of the kinds.
inline constexpr std::array<std::string_view, 9> failure_names{
    "airspeed_blank", "airspeed_stuck", "flap_stuck", "power_partial", "power_lost",
    "light_out",      "light_misaimed", "lights_out", "condensation"};

}  // namespace slopewise
