// The track: what an attempt looked like, ten times a second. Every figure of the summary is computed
// from it, so that anyone can compute it again from the exported file.
#pragma once

#include <array>
#include <cstdint>
#include <vector>

#include "lesson/attempt.h"

namespace slopewise {

struct TrackPoint {
    double time_s = 0.0;
    double distance_m = 0.0;      // eye to aim point along the ground, negative beyond it
    double eye_height_m = 0.0;    // above the aim point
    double wheel_height_m = 0.0;  // above the threshold
    double path_error_rad = 0.0;  // eye's elevation less the nominal path, positive high
    double path_offset_m = 0.0;   // eye's height above the nominal path
    double cas_mps = 0.0;
    double ground_speed_mps = 0.0;
    double sink_mps = 0.0;  // positive down
    double pitch_rad = 0.0;
    double power = 0.0;  // fraction the engine gives
    double lever = 0.0;  // throttle lever, 0 to 1
    double stick = 0.0;  // -1 pushed ... +1 pulled
    double trim = 0.0;   // -1 ... +1
    bool go_around_said = false;
    int flap_setting = 0;        // lever
    double flap_position = 0.0;  // in settings
    double headwind_mps = 0.0;
    int white_count = -1;  // -1: no unit faces the eye
    std::array<double, 4> white_fraction{-1.0, -1.0, -1.0,
                                         -1.0};  // of the units of the picture, in their order; -1 unseen
};

struct Track {
    std::vector<TrackPoint> points;
    std::size_t scored = 0;  // the first so many points count; the rest was flown on, unscored
};

inline constexpr int track_interval_ticks = 12;  // 10 Hz

// The point that the attempt is at now.
TrackPoint observe(const Scenario& scenario, const Attempt& attempt);

Track begin_track(const Scenario& scenario, const Attempt& attempt);

// Call after each tick: adds a point every tenth of a second and one where scoring ends.
void extend(Track& track, const Scenario& scenario, const Attempt& attempt, const Events& events);

}  // namespace slopewise
