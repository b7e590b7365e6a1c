// A recording flown again once and kept, so that any of its moments can be stood at: forwards, backwards, a
// tick at a time.
#pragma once

#include <cstdint>
#include <vector>

#include "flight/instruments.h"
#include "record/recording.h"

namespace slopewise {

// An attempt at one tick, with what is seen of it that is not its state.
struct FlownMoment {
    Attempt attempt;
    FlightState before;  // one tick ago, to blend the picture; at the start the state itself
    Instruments instruments;
    std::int64_t stalled_tick = -1;  // the last tick so far at which the stall warning sounded; -1: none
};

struct Rewind {
    Recording recording;
    Scenario scenario;
    std::vector<FlownMoment> each_second;  // at tick 0, 120, 240 ...
    std::int64_t last_tick = 0;
    std::int64_t first_diverged_tick = -1;  // as of `replay`; -1: it flies the same
};

// Flies the recording in its scenario, which must be of the recording's lesson, and keeps a copy of it each
// second; `each` is called as `replay` does.
Rewind make_rewind(const Recording& recording, const Scenario& scenario, const ReplayWatcher& each);
Rewind make_rewind(const Recording& recording, const Scenario& scenario);

// The attempt after so many ticks, limited to what was recorded: the same bits as in a replay from the start.
// Flies a second at most.
FlownMoment moment_at(const Rewind& rewind, std::int64_t tick);

inline Attempt attempt_at(const Rewind& rewind, std::int64_t tick) { return moment_at(rewind, tick).attempt; }

// The controls that the next tick is flown with: at tick 0 the first recorded, before any the trimmed ones.
Controls controls_at(const Rewind& rewind, std::int64_t tick);

}  // namespace slopewise
