// Measures that only a success criterion asks for; all others are the review's.
#pragma once

#include <optional>

#include "review/review.h"

namespace slopewise {

struct Extremes {
    double least = 0.0, most = 0.0;
};

// Speed beside target (m/s), at its least and most.
Extremes speed_extremes_mps(const Scenario& scenario, TrackPoints points);

// The longest time in speed tolerance (s) in each piece of the flight between its flap steps; the shortest of
// these.
double speed_held_s(const Scenario& scenario, TrackPoints points, const std::vector<FlapStep>& steps);

// How often a minute the eye went from one side of the path to the other. It is on a side once it is beyond
// half of the answer band, so that unsteadiness about the path is none.
double path_crossings_per_min(const Criteria& criteria, TrackPoints points);

// The lowest elevation of the eye (rad) above the aim point while the wheels were above a height (m); none if
// they never were.
std::optional<double> lowest_angle_rad(const Scenario& scenario, TrackPoints points, double above_m);

// Height of the eye (m) lost before the path was met from below, that is before the eye was within 10 minutes
// of arc of it (where a PAPI turns from three red to two: lights.h); none if it was not met. A flight that
// begins there or above lost none.
std::optional<double> lost_before_path_m(TrackPoints points);

// The largest share of the throttle's travel while the wheels were below a height (m).
double largest_lever_below(TrackPoints points, double below_m);

// The least height of the wheels (m) above the line that the leader came down on, as far as its touchdown.
double least_above_leader_m(const Scenario& scenario, TrackPoints points);

}  // namespace slopewise
