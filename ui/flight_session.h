// One flight in progress with all that is kept of it: the attempt, its recording, its track, and the
// summary once scoring has ended.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "flight/instruments.h"
#include "record/recording.h"
#include "review/summary.h"
#include "ui/display.h"

namespace slopewise {

// A look at the dark panel.
struct Peek {
    std::int64_t begin_tick = 0, ticks = 0;
};

// What helped or was kept back while scored, at any time.
struct AidsUsed {
    bool magnifier = false, lamp_letters = false, lamp_shapes = false, side_profile = false;
    bool eyes_outside = false;
    InstrumentSet covered, failed;
};

struct FlightSession {
    Scenario scenario;
    Attempt attempt;
    FlightState before;  // one tick ago, to blend the picture
    Instruments instruments;
    Recording recording;
    Track track;
    std::optional<Summary> summary;
    bool paused = false;
    AidsUsed aids;
    std::vector<Peek> peeks;    // of the scored part
    bool peeking = false;       // the last of them goes on
    std::int64_t stalling = 0;  // ticks for which the stall warning is still shown
};

// Memory for an approach of five minutes is taken at once, so that none is while it is flown.
FlightSession begin_session(Scenario scenario);

// Whether the path from the side is shown: the student wants it, or the lesson does.
bool shows_side_profile(const FlightSession& session, const Display& display);

// Call once a frame before its ticks: how the flight is shown, and whether the panel is looked at.
void watch(FlightSession& session, const Display& display, bool peek);

// One tick: the attempt advances, is recorded and tracked; summarised when scoring ends.
Events tick_session(FlightSession& session, const Controls& controls);

}  // namespace slopewise
