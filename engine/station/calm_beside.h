// The same hands in calm air: a second flight beside the first, given every control as it was recorded, in
// air that stands still. It begins at the same place and moves through the air in the same way; what becomes
// of it shows what the wind did. It follows from the lesson and the recording alone.
#pragma once

#include <cstddef>
#include <vector>

#include "record/recording.h"
#include "review/track.h"

namespace slopewise {

struct CalmPoint {
    double time_s = 0.0;
    double distance_m = 0.0;    // eye to aim point along the ground
    double eye_height_m = 0.0;  // above the aim point
    double offset_m = 0.0;      // above the nominal path
    double cas_mps = 0.0;
};

struct CalmBeside {
    Scenario scenario;  // in calm air
    Attempt attempt;
    std::size_t next_change = 0;  // of the recording
    Controls controls;
    bool over = false;             // on the ground, or past the far end of the runway
    std::vector<CalmPoint> flown;  // ten a second, the first where both begin
};

// The wind, the turbulence and whatever else the lesson places in the air are left out; what fails, fails
// here too.
CalmBeside begin_calm_beside(const Scenario& scenario);

// Flies on until the recording ends. A recording may grow between two calls; it may not become another.
void catch_up(CalmBeside& calm, const Recording& recording);

// The calm flight less the other, where both were equally far from the aim point.
struct CalmDifference {
    double higher_m = 0.0;
    double faster_mps = 0.0;  // airspeed, calibrated
    double earlier_s = 0.0;   // that it was there
    bool was_there = false;   // false: it is not yet there; heights over the path and speeds as both are now
    bool came_down = false;   // it came to the ground before it got there: no difference
    double short_of_m = 0.0;  // then: how far from the aim point it came down
};
CalmDifference calm_difference(const CalmBeside& calm, const TrackPoint& now);

}  // namespace slopewise
