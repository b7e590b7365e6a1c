// One attempt as it is replayed: flown again where it still flies the same, else along the track that was
// kept.
#pragma once

#include <optional>
#include <string>

#include "record/rewind.h"
#include "review/track.h"

namespace slopewise {

struct ReplayedFlight {
    std::string name;  // "this attempt"
    Rewind rewind;
    Track track;                    // of what is shown
    End end = End::none;            // of its scored part
    bool along_track = false;       // the kept track is shown, not what the controls do now
    std::vector<double> climb_mps;  // along a kept track: the vertical speed shown at each of its points
};

// `kept`: the track kept with the recording, null when there is none. It is shown only where the recording no
// longer flies the same.
ReplayedFlight replayed_flight(const Recording& recording, const Scenario& scenario, const Track* kept);

inline bool differs(const ReplayedFlight& flight) { return flight.rewind.first_diverged_tick >= 0; }
std::int64_t last_tick(const ReplayedFlight& flight);

// What is shown at a moment between two ticks: the attempt at the tick that ends there and the share of that
// tick that has passed.
struct ShownMoment {
    FlownMoment moment;
    double blend = 1.0;
    TrackPoint point;  // what a track would hold of it
};
ShownMoment shown_at(const ReplayedFlight& flight, double tick);

// Where the attempt was at a distance to the aim point (m); none where it never was.
std::optional<TrackPoint> point_at_distance(const ReplayedFlight& flight, double distance_m);

}  // namespace slopewise
