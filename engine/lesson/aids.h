// Which aids a lesson shows. What an aid is not shown for, the student has to find without.
#pragma once

#include <array>
#include <string_view>

namespace slopewise {

struct LessonAids {
    enum class Lights {
        shown,
        hidden,
        hidden_below,       // a wheel height: near the ground they are not to be chased
        hidden_above,       // a wheel height: first the picture is judged, then the lights tell
        after_first_input,  // of the student's
    };

    Lights lights = Lights::shown;
    double lights_height_m = 0.0;  // of hidden_below and hidden_above
    bool airspeed_hidden = false;  // the indicator is covered, not broken
    bool eyes_outside = false;     // the panel is dark until it is looked at
    int help_stage = 3;            // the path help begins at this stage: 0 the most, 3 none

    friend bool operator==(const LessonAids&, const LessonAids&) = default;
};

inline constexpr std::array<std::string_view, 5> lesson_lights_names{"shown", "hidden", "hidden_below",
                                                                     "hidden_above", "after_first_input"};

inline constexpr int most_help_stage = 3;

// Whether the slope lights are seen at a wheel height (m above the threshold), by a student who has moved a
// control yet or not.
constexpr bool lights_shown(const LessonAids& aids, double wheel_height_m, bool has_acted) {
    switch (aids.lights) {
    case LessonAids::Lights::shown: return true;
    case LessonAids::Lights::hidden: return false;
    case LessonAids::Lights::hidden_below: return wheel_height_m >= aids.lights_height_m;
    case LessonAids::Lights::hidden_above: return wheel_height_m <= aids.lights_height_m;
    case LessonAids::Lights::after_first_input: return has_acted;
    }
    return true;
}

}  // namespace slopewise
