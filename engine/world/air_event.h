// Discrete happenings in the air that a lesson places: a gust, a sink patch, a step of shear.
#pragma once

#include <array>
#include <string_view>

#include "world/turbulence.h"

namespace slopewise {

struct AirEvent {
    enum class Kind { gust, sink_patch, shear };
    enum class Trigger { time, distance };

    Kind kind = Kind::gust;
    Trigger trigger = Trigger::time;
    double at_s = 0.0;           // time since the start
    double at_distance_m = 0.0;  // eye to aim point along the ground, falling
    double along_mps = 0.0;      // peak, positive: more headwind
    double up_mps = 0.0;         // peak, positive: rising air
    double length_m = 0.0;       // gust: distance flown to its peak (H); patch: its whole length; shear: the
                                 // distance flown while it comes in
};

// Their names, in the order of the kinds.
inline constexpr std::array<std::string_view, 3> air_event_names{"gust", "sink_patch", "shear"};

// Where the flight is in an event.
struct AirEventState {
    bool begun = false;
    double flown_m = 0.0;  // through the air, since it began
};

// Whether the event begins at this time and distance to the aim point.
bool air_event_begins(const AirEvent& event, double time_s, double distance_m);

// What the event adds to the air after `flown_m` in it.
// A gust has the 1-cosine shape (U/2)(1 - cos(pi s/H)), 0 <= s <= 2H (14 CFR 25.341(a); shape from memory). A
// sink patch has the same over its length: zero at both ends, full in the middle. A shear rises by a half
// cosine over its length and stays.
Gust air_event_gust(const AirEvent& event, double flown_m);

// F-factor (Bowles 1990, read in secondary sources): the rate of change of tailwind (m/s2) over g, less the
// updraught (m/s) over the true airspeed (m/s, > 0). What the air takes away, as a loss of climb gradient;
// 0.1 and more is hazardous.
double f_factor(double tailwind_rate_mps2, double updraught_mps, double tas_mps);

// The largest F-factor that an event reaches when flown through at a true airspeed (m/s, > 0).
double largest_f_factor(const AirEvent& event, double tas_mps);

}  // namespace slopewise
