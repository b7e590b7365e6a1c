// One flight in progress with all that is kept of it: the attempt, its recording, its track, and what the
// debrief knows of it once scoring has ended.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "debrief/reviewed_flight.h"
#include "flight/instruments.h"
#include "help/call_outs.h"
#include "help/path_help.h"
#include "logbook/journal.h"
#include "logbook/kept_attempt.h"
#include "record/recording.h"
#include "ui/devices_used.h"
#include "ui/display.h"
#include "ui/gate_chimes.h"
#include "ui/shared_flight.h"

namespace slopewise {

// A look at the dark panel.
struct Peek {
    std::int64_t begin_tick = 0, ticks = 0;
};

// What helped or was kept back while scored, at any time.
struct AidsUsed {
    bool magnifier = false, lamp_letters = false, lamp_shapes = false, side_profile = false;
    bool eyes_outside = false;
    bool guide_ready = false, call_outs = false;
    InstrumentSet covered, failed;
};

struct FlightSession {
    Scenario scenario;
    Attempt attempt;
    FlightState before;  // one tick ago, to blend the picture
    Instruments instruments;
    Recording recording;
    Track track;
    Criteria criteria;                       // what it is held to
    std::optional<ReviewedFlight> reviewed;  // from the end of scoring on
    bool paused = false;
    std::string why_paused;  // when nobody asked for it; empty mostly
    double lost_s = 0.0;     // of the scored part, by the clock on the wall: the machine was too slow
    GateChimes gates;
    AidsUsed aids;
    std::vector<Peek> peeks;    // of the scored part
    bool peeking = false;       // the last of them goes on
    std::int64_t stalling = 0;  // ticks for which the stall warning is still shown

    // What helps while it is flown.
    PathHelp help;
    bool calls_for_help = false;  // its key is held
    CallOuts call_outs;
    bool speed_shown = true;           // neither covered nor failed: it may be called
    CallOut caption = CallOut::none;   // the call that is still shown,
    std::int64_t caption_ticks = 0;    // and for how long
    CallOut to_speak = CallOut::none;  // made and not yet spoken

    SharedFlight sharing;  // who has which control
    bool acted = false;    // the student has moved a control
    DevicesUsed devices;   // and by what, while scored

    // How far it is kept.
    std::string id;
    bool journal_open = false;
    JournalMark journal;
    std::string piece;            // the journal's memory
    std::int64_t kept_ticks = 0;  // flown when it was last kept whole
    bool from_logbook = false;    // opened to be looked at: nothing of it is kept again
};

// Memory for an approach of five minutes is taken at once, so that none is while it is flown.
FlightSession begin_session(Scenario scenario, const Criteria& criteria = {}, const HelpPlan& plan = {});

// A kept attempt, to be looked at: its summary and its track. `scenario` is of its lesson.
FlightSession session_of(KeptAttempt kept, Scenario scenario, const Criteria& criteria);

// What is kept of a session as far as it is flown.
KeptAttempt kept_of(const FlightSession& session);

// What helped, as a recording tells it: of peeks, the share of the scored time and the longest.
RecordedAids recorded_aids(const FlightSession& session);

// How a flight is shown: as the user has it, less what its lesson keeps back.
Display shown_display(const FlightSession& session, const Display& display);

// Whether its lesson shows the slope lights now; `wheel_height_m` above the threshold.
bool shows_lights(const FlightSession& session, double wheel_height_m);

// Whether the path from the side is shown: the student wants it, or the lesson does.
bool shows_side_profile(const FlightSession& session, const Display& display);

// Call once a frame before its ticks: how the flight is shown, whether the panel is looked at and the path
// help called.
void watch(FlightSession& session, const Display& display, bool peek, bool calls_for_help = false);

// One tick with what the student holds, and the other pilot where he has a control: the attempt advances, is
// recorded and tracked; reviewed when scoring ends.
Events tick_session(FlightSession& session, const Controls& student);

// The same with controls that are merged already, as a recording has them.
Events tick_with(FlightSession& session, const Controls& controls);

// Reviews a scored flight again: one that was flown on shows more of its go-around.
void review_session(FlightSession& session);

}  // namespace slopewise
