// A file of recorded flights: a recording, an attempt that the page kept, or a student's whole file. Read,
// checked against the shipped data, flown again and measured.
#pragma once

#include <functional>
#include <string>

#include "base/result.h"
#include "debrief/reviewed_flight.h"

namespace slopewise::cli {

struct RecordedFlight {
    Recording recording;
    ReviewedFlight flight;
    bool cut_off = false;        // it did not come to its end: no figure of it counts in a trend
    bool by_kept_track = false;  // it no longer flies the same and was measured as it was flown
};

// Hands each flight of the file on; returns what could not be read of it.
std::vector<Problem> each_recorded_flight(const std::string& path, const Criteria& criteria,
                                          const std::function<void(RecordedFlight)>& each);

// Of a file that holds one.
Result<RecordedFlight> review_file(const std::string& path, const Criteria& criteria);

}  // namespace slopewise::cli
