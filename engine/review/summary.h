// The deviation summary: what the scored part of a track shows, as numbers.
#pragma once

#include <array>
#include <span>
#include <vector>

#include "lesson/attempt.h"
#include "review/track.h"

namespace slopewise {

// Deviations of one track point from what was wanted, and whether each is in tolerance.
struct Deviations {
    double path_rad = 0.0, path_m = 0.0;
    double speed_mps = 0.0;  // calibrated airspeed less target
    double sink_mps = 0.0;   // sink less ground speed x tan(nominal path)
    bool path_in = false, speed_in = false, sink_in = false;

    bool all_in() const { return path_in && speed_in && sink_in; }
};

// Path is in tolerance within the angle OR within the floor height: the larger of the two.
Deviations deviations(const Scenario& scenario, const TrackPoint& point);

struct GateValue {
    double height_ft = 0.0;   // of the wheels above the threshold
    bool reached = false;     // false: the flight began above it and never came down to it
    double time_s = 0.0;      // when the wheels first passed it downwards
    double distance_m = 0.0;  // to the aim point, then
    int white_count = -1;     // then
    std::array<double, 4> white_fraction{-1.0, -1.0, -1.0, -1.0};  // then, of the units of the picture
    Deviations mean;             // over the scored part of two seconds before to two after
    double power = 0.0;          // mean likewise, fraction
    double flap_position = 0.0;  // then, in settings
    int flap_setting = 0;
};

// Constant and variable error: rms^2 = bias^2 + scatter^2 (population standard deviation).
struct Spread {
    double bias = 0.0, scatter = 0.0, rms = 0.0;
};

struct WorstMoment {
    std::size_t point = 0;  // index into the track
    double severity = 0.0;  // largest deviation as a multiple of its tolerance
    Deviations deviations;
};

struct Summary {
    End end = End::none;
    TrackPoint last;  // where scoring ended
    double scored_s = 0.0;
    std::vector<GateValue> gates;  // those the flight began above, highest first
    Spread path_rad, path_m, speed_mps;
    double path_share = 0.0, speed_share = 0.0, sink_share = 0.0, all_share = 0.0;  // of points in tolerance
    LightSite::Kind light_kind = LightSite::Kind::papi;
    int light_units = 4;                  // of the picture
    std::array<double, 5> light_share{};  // of points showing 0 ... light_units white
    double light_unseen_share = 0.0;
    int light_changes = 0;
    WorstMoment worst;
};

// Half-width of the window that a gate's means are taken over.
inline constexpr double gate_window_s = 2.0;

Summary summarise(const Scenario& scenario, const Track& track, End end);

Spread spread_of(std::span<const double> values);

}  // namespace slopewise
