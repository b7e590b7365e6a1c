// How far one point of a track is from what was wanted, and whether that is in tolerance.
#pragma once

#include <span>

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

// The points that count.
using TrackPoints = std::span<const TrackPoint>;
inline TrackPoints scored_points(const Track& track) { return {track.points.data(), track.scored}; }

}  // namespace slopewise
