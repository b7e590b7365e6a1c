// What an approach was like at a gate.
#pragma once

#include <array>

#include "review/deviations.h"

namespace slopewise {

struct GateValue {
    double height_ft = 0.0;   // of the wheels above the threshold
    bool reached = false;     // false: the flight never came down to it, or began below it
    std::size_t point = 0;    // the first at or below the gate
    double time_s = 0.0;      // when the wheels first passed it downwards
    double distance_m = 0.0;  // to the aim point, then
    int white_count = -1;     // then
    std::array<double, 4> white_fraction{-1.0, -1.0, -1.0, -1.0};  // then, of the units of the picture
    double flap_position = 0.0;                                    // then, in settings
    int flap_setting = 0;

    // Means over the scored part of two seconds before to two after.
    Deviations mean;
    double cas_mps = 0.0, sink_mps = 0.0;
    double pitch_rad = 0.0;
    double power = 0.0;  // fraction
    double stick = 0.0;  // held: what the trim does not carry
    double trim = 0.0;

    // Over the ten seconds before.
    double path_trend_radps = 0.0;
    double speed_trend_mps2 = 0.0;
    double sink_trend_mps2 = 0.0;
    double pitch_range_rad = 0.0;  // greatest less least
    double lever_step = 0.0;       // the largest change within two seconds, share of travel
};

// Half-width of the window that a gate's means are taken over.
inline constexpr double gate_window_s = 2.0;
// How long before the gate its trends are taken.
inline constexpr double gate_trend_s = 10.0;

GateValue gate_value(const Scenario& scenario, TrackPoints points, double height_ft);

// What the approach was like where it began, at the top of its descent: then, and as means of the first two
// seconds. Its height is that of the wheels then; nothing was before it, so that it has no trends.
GateValue start_value(const Scenario& scenario, TrackPoints points);

// The index of the first point at or below a wheel height; 0: none, or it began there, however it went on.
std::size_t first_below(TrackPoints points, double height_m);

}  // namespace slopewise
