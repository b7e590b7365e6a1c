// How a lesson is practised: what changes from run to run, and from where the path is learned.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "lesson/failure.h"
#include "lesson/start.h"
#include "world/wind.h"

namespace slopewise {

// One of several ways for a lesson to begin; which one, the student does not know before.
struct SetUp {
    std::string name;       // "fast", told afterwards
    bool unstable = false;  // out of the gate's limits with no room to mend it: the answer is to go around
    bool lights_hidden = false;  // whatever the lesson's aids show
    Start start;
    std::string runway_id;           // empty: the lesson's
    std::optional<Wind> wind;        // none: the lesson's
    std::optional<Failure> failure;  // besides the lesson's own
};

inline constexpr std::size_t most_set_ups = 12;
inline constexpr std::size_t most_chain_starts = 6;
inline constexpr std::size_t most_practice_runways = 6;

struct Practice {
    bool vary_start = false;           // from the fourth run on: high, on or low
    bool vary_wind = false;            // from the fourth run on: 0, 8 or 15 kt
    std::vector<std::string> runways;  // from the fourth run on: the lesson's own or one of these
    std::vector<SetUp> set_ups;        // from the first run on: each once before any comes again
    std::vector<double> chain_m;       // starts on the path, the nearest first; empty: no chain
};

}  // namespace slopewise
