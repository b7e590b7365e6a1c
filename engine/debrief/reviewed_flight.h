// One flight with all that the debrief knows of it: flown again if need be, measured, diagnosed.
#pragma once

#include "record/recording.h"
#include "review/diagnosis/diagnosis.h"

namespace slopewise {

struct ReviewedFlight {
    Scenario scenario;
    Criteria criteria;
    Track track;
    Review review;
    Diagnosis diagnosis;
    std::int64_t first_diverged_tick = -1;  // of a recording that no longer flies the same; -1: it does
};

// `panel_share`: of the time, looking inside, 0 to 1; -1: not measured.
ReviewedFlight review_flight(const Scenario& scenario, const Criteria& criteria, const Track& track, End end,
                             double panel_share = -1.0);

// Where no detector speaks: that nothing stands out, or that the worst moment is to be looked at, since a
// gate was not stable.
std::string no_fault_words(const ReviewedFlight& flight);

// Flies the recording again in its scenario, which must be of the recording's lesson.
ReviewedFlight review_recording(const Recording& recording, const Scenario& scenario,
                                const Criteria& criteria);

}  // namespace slopewise
