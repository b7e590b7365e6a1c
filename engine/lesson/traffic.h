// A larger aircraft ahead on the same final: where it is at a time, and the line it came down on.
#pragma once

#include "world/runway.h"

namespace slopewise {

// It flies straight down its own path to its own touchdown point, and rolls out.
struct Traffic {
    double ahead_m = 0.0;           // nearer the runway than our start, along the ground; 0: there is none
    double path_rad = 0.0;          // positive
    double touchdown_m = 0.0;       // beyond the threshold
    double ground_speed_mps = 0.0;  // until it touches
    double span_m = 0.0;            // of its wings: its true size

    bool there() const { return ahead_m > 0.0; }
    friend bool operator==(const Traffic&, const Traffic&) = default;
};

struct LeaderPlace {
    double x_m = 0.0, z_m = 0.0;  // of its wheels, in the runway's frame
    bool on_ground = false;
    double since_touchdown_s = -1.0;  // for the puff of its tyres; -1: still flying
};

// It slows this much once down (m/s2), to a stop: a firm but usual landing roll (common practice, no source).
inline constexpr double leader_braking_mps2 = 2.0;

// Its place at a time (s, 0 or more) since our start at `start_distance_m` from our aim point.
LeaderPlace leader_at(const Traffic& traffic, const Runway& runway, double start_distance_m, double time_s);

// Height (m above the threshold) of the line that its wheels came down on, at a place along the runway's x;
// beyond its touchdown point the ground.
double leader_path_height_m(const Traffic& traffic, const Runway& runway, double x_m);

}  // namespace slopewise
