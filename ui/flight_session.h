// One flight in progress with all that is kept of it: the attempt, its recording, its track, and the
// summary once scoring has ended.
#pragma once

#include <optional>

#include "flight/instruments.h"
#include "record/recording.h"
#include "review/summary.h"

namespace slopewise {

struct FlightSession {
    Scenario scenario;
    Attempt attempt;
    FlightState before;  // one tick ago, to blend the picture
    Instruments instruments;
    Recording recording;
    Track track;
    std::optional<Summary> summary;
    bool paused = false;
};

FlightSession begin_session(Scenario scenario);

// One tick: the attempt advances, is recorded and tracked; summarised when scoring ends.
Events tick_session(FlightSession& session, const Controls& controls);

}  // namespace slopewise
