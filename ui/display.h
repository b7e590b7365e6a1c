// How the program is shown, as the user set it up: the look, the aids, what is covered or fails, the screen's
// size.
#pragma once

#include <array>
#include <cmath>
#include <string_view>

namespace slopewise {

enum class Look { standard, high_contrast, night };

// Some of the instruments, chosen each alone.
struct InstrumentSet {
    bool airspeed = false, altimeter = false, vertical_speed = false, power = false;
    bool flap = false, trim = false, stall_warning = false;

    friend bool operator==(const InstrumentSet&, const InstrumentSet&) = default;
};

// Each of them, in the order in which they are listed: the end of its key in kept settings, its name at the
// head of a line and in the middle of one.
struct InstrumentName {
    bool InstrumentSet::*which;
    std::string_view key, title, name;
};
inline constexpr std::array<InstrumentName, 7> instrument_names{
    {{&InstrumentSet::airspeed, "airspeed", "Airspeed", "airspeed"},
     {&InstrumentSet::altimeter, "altimeter", "Altimeter", "altimeter"},
     {&InstrumentSet::vertical_speed, "vertical_speed", "Vertical speed", "vertical speed"},
     {&InstrumentSet::power, "power", "Power", "power"},
     {&InstrumentSet::flap, "flap", "Flap", "flap"},
     {&InstrumentSet::trim, "trim", "Trim", "trim"},
     {&InstrumentSet::stall_warning, "stall_warning", "Stall warning", "stall warning"}}};

struct Display {
    Look look = Look::standard;
    bool projector_text = false;  // larger text, and the airspeed for the back row
    bool reduced_motion = false;
    bool eyes_outside = false;    // the panel is dark but for a peek
    bool side_profile = false;    // the path from the side, while flying
    bool help_by_itself = false;  // the path help comes uncalled when the path is lost
    bool call_outs = false;       // the instructor's short calls
    bool magnifier = true;        // the lights enlarged where the screen cannot show them
    bool lamp_letters = false;    // R and W in the magnifier
    bool lamp_shapes = false;     // rings and discs in the magnifier
    InstrumentSet covered;        // an instructor's lid lies on them
    InstrumentSet failed;         // they show no reading, and say so; the stall warning is silent
    double screen_width_cm = 0;   // of the picture, the window filling the screen; 0: not stated
    double viewing_distance_cm = 0;

    friend bool operator==(const Display&, const Display&) = default;
};

inline constexpr double most_screen_width_cm = 400;
inline constexpr double most_viewing_distance_cm = 1000;

// Across the view, fixed: stated on the screen, never changed silently (angles are what is taught).
inline constexpr double horizontal_fov_deg = 40.0;

// How wide a picture of the view must be to be seen under its true angles from a distance (cm): a chord of
// the field of view, 2 d tan(fov / 2).
inline double true_width_cm(double viewing_distance_cm) {
    return 2.0 * viewing_distance_cm * std::tan(0.5 * horizontal_fov_deg * 3.14159265358979323846 / 180.0);
}

// Share of true size at which the picture is seen; 0 when its size or distance is not stated.
inline double share_of_true_size(const Display& display) {
    if (display.screen_width_cm <= 0 || display.viewing_distance_cm <= 0) return 0;
    return display.screen_width_cm / true_width_cm(display.viewing_distance_cm);
}

}  // namespace slopewise
