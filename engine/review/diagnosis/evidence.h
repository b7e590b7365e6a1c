// What a detector looks at, and what it answers.
#pragma once

#include <vector>

#include "review/review.h"

namespace slopewise {

// One approach with everything that was measured of it.
struct Approach {
    const Scenario& scenario;
    const Criteria& criteria;
    TrackPoints points;  // scored
    const Review& review;

    // The briefing's figures: steady on the path at target speed with landing flap, in the wind and without.
    double briefed_pitch_rad = 0.0;
    double briefed_lever = 0.0, calm_lever = 0.0;

    double panel_share = -1.0;  // of the time, looking inside; -1: not measured
};

// `panel_share`: 0 to 1, or -1 where it was not measured, and nothing is said of it.
Approach approach_of(const Scenario& scenario, const Criteria& criteria, const Track& track,
                     const Review& review, double panel_share = -1.0);

// Strength 1 is just enough to speak of; less is silence. Moments are indices of the track.
struct Evidence {
    double strength = 0.0;
    std::vector<std::size_t> moments;
};

// ---- what several detectors ask ----

double path_error_deg(const TrackPoint& point);
double height_ft(const TrackPoint& point);
double speed_error_kt(const Approach& approach, const TrackPoint& point);

// The time (s) during which `is(i)` holds, as evidence that is just enough at `enough_s`; its moments are the
// beginnings.
template <class Is>
Evidence time_while(const Approach& approach, double enough_s, Is&& is) {
    Evidence evidence;
    double time_s = 0.0;
    bool was = false;
    for (std::size_t i = 1; i < approach.points.size(); ++i) {
        const bool now = is(i);
        if (now) time_s += approach.points[i].time_s - approach.points[i - 1].time_s;
        if (now && !was) evidence.moments.push_back(i);
        was = now;
    }
    evidence.strength = time_s / enough_s;
    return evidence;
}

}  // namespace slopewise
