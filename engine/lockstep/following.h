// One flight in two places: what a leader flies is told as it is flown, a piece of its recording at a time,
// and flown again here by the same controls, so that both are the same flight to the last bit. Whether they
// still are, the hashes of the leader's seconds say.
#pragma once

#include <cstdint>
#include <string_view>

#include "lesson/attempt.h"
#include "record/recording.h"

namespace slopewise {

struct Following {
    Recording led;                          // the leader's, as far as it is known
    Controls held;                          // by the leader's hands, in the tick that was flown here last
    std::size_t next_change = 0;            // of `led`, not yet reached here
    std::int64_t first_diverged_tick = -1;  // -1: the same flight so far
};

// From the start of what is known; `start` is the attempt before its first tick.
Following follow(Recording led, const Attempt& start);

// A piece of the leader's (`journal_piece`). False, with nothing changed, when it is damaged, does not go on
// from what is known, or leads beyond what a recording may hold.
bool learn(Following& following, std::string_view piece);

// Ticks that the leader is known to have flown and that are not flown here; none once it stands at rest.
std::int64_t ticks_behind(const Following& following, const Attempt& attempt);

// The leader's controls in the coming tick. Call it once a tick, while there is any behind.
Controls led_controls(Following& following, const Attempt& attempt);

// Call after each tick: marks where the flight stops being the leader's.
void compare(Following& following, const Attempt& attempt);

}  // namespace slopewise
