// A drill that is flown: who has which control, what is said now, and what it came to. The caller flies the
// attempt as any other, with the controls that this gives.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "drill/command_pilot.h"
#include "drill/partner.h"
#include "drill/result.h"
#include "drill/speed_hold.h"
#include "review/review.h"

namespace slopewise {

// A command as it was told.
struct ToldCommand {
    std::int64_t tick = 0;
    Command command = Command::wait;
};

struct FlownDrill {
    Drill drill;
    std::uint64_t seed = 0;
    Scenario scenario;  // check `start_trim.flyable`
    SharedControls sharing;
    ModelPilot partner;     // has what the student has not
    CommandPilot follower;  // does what is told
    std::vector<ToldCommand> told;
    SpeedHoldState speed_hold;
    double call_s = -1.0;  // of the go-around; -1: none comes
};

// The drill at its start, the controls handed over. `drill` must be one that is flown.
FlownDrill begin_flown(const Drill& drill, const Scenario& base, std::uint64_t seed);

// The controls for the coming tick, from what the student holds. Call once before each tick.
Controls flown_controls(FlownDrill& flown, const Attempt& attempt, const Controls& student);

// Call once after each tick.
void advance_flown(FlownDrill& flown, const Attempt& attempt);

// Where the student tells and does not fly.
void tell(FlownDrill& flown, const Attempt& attempt, Command command);

// Whether there is nothing left to fly: the task is done, the approach has ended, or the go-around was flown
// on for long enough.
bool is_finished(const FlownDrill& flown, const Attempt& attempt);

// What to show now.
struct FlownView {
    std::string share;     // "You have power"
    std::string say;       // the task or the call of the moment: "Go around!"
    bool called = false;   // it is a call, to be answered at once
    bool telling = false;  // the commands are to be shown
    bool lights_shown = true, path_counts = true;
};
FlownView flown_view(const FlownDrill& flown, const Attempt& attempt);

DrillResult result_of(const FlownDrill& flown, const Track& track, const Attempt& attempt,
                      const Criteria& criteria);

}  // namespace slopewise
