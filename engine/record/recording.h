// A recording of one attempt: the controls, exactly, and a hash of the state each second, so that a
// replay is the same flight or says where it stops being it.
#pragma once

#include <cstdint>
#include <functional>
#include <string>
#include <vector>

#include "lesson/attempt.h"
#include "record/circumstances.h"

namespace slopewise {

struct Recording {
    struct Change {
        std::int64_t tick;  // the controls hold from this tick on
        Controls controls;
    };

    Lesson lesson;  // what was flown, whole
    Circumstances circumstances;
    std::vector<Change> changes;
    std::vector<std::uint64_t> hashes;  // of the state after each 120 ticks
    std::int64_t ticks = 0;
    std::uint64_t final_hash = 0;
};

// Ticks between two entries of `hashes`.
inline constexpr std::int64_t hash_interval_ticks = 120;

Recording begin_recording(const Lesson& lesson);

// Call after each tick with the controls it was given and the state it left.
void record(Recording& recording, const Controls& controls, const Attempt& attempt);

// Flies the recording again in its scenario.
struct Replay {
    Attempt attempt;
    std::int64_t first_diverged_tick = -1;  // -1: the same flight; else the first checked tick that differs
};
Replay replay(const Recording& recording, const Scenario& scenario);

// The same, calling `each(attempt, events)` at the start (no events) and after every tick.
using ReplayWatcher = std::function<void(const Attempt&, const Events&)>;
Replay replay(const Recording& recording, const Scenario& scenario, const ReplayWatcher& each);

}  // namespace slopewise
