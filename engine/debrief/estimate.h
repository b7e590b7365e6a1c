// The student's own estimate, against what was.
#pragma once

#include <string>

#include "debrief/reviewed_flight.h"
#include "record/circumstances.h"

namespace slopewise {

// What the whole approach was mostly like: high or low where the mean path deviation is beyond the answer
// band's angle, fast or slow where the mean speed is more than 3 kt off (common practice, no source).
Estimate truth_of(const ReviewedFlight& flight);

// The decision gate was reached: there is something to say of it.
bool gate_is_known(const ReviewedFlight& flight);

struct EstimateScore {
    bool path_right = false, speed_right = false, stable_right = false;
    bool gate_known = false;  // false: the decision gate was not reached, and nothing can be said of it

    int right() const { return path_right + speed_right + (gate_known && stable_right); }
    int asked() const { return 2 + gate_known; }
};

EstimateScore score_of(const Estimate& estimate, const ReviewedFlight& flight);

// "You said: on the path, fast, stable. It was: low, fast, not stable. 1 of 3." Without the last of each
// where the gate was not reached.
std::string estimate_sentence(const Estimate& estimate, const ReviewedFlight& flight);

}  // namespace slopewise
