// Opening a replay from anywhere: from the summary of what was just flown, or from a logbook.
#pragma once

#include <optional>
#include <string>

#include "record/recording.h"
#include "review/track.h"

namespace slopewise {

struct App;

// A recording with the name it is shown under and the track kept with it, if any.
struct ComparedAttempt {
    Recording recording;
    std::string name;  // "attempt of 12 March"
    const Track* kept = nullptr;
};

// Shows the replay, and comes back to the present screen when it is closed. Where this version does not know
// an aircraft or runway of a recording, nothing opens and a notice says so. `kept` is only read during the
// call.
void open_replay(App& app, const Recording& recording, const Track* kept,
                 const std::optional<ComparedAttempt>& other = std::nullopt);

void close_replay(App& app);

}  // namespace slopewise
