// The places of an attempt worth going to: gates, changes of the lights, control inputs, what went wrong.
#pragma once

#include <vector>

#include "review/criteria.h"
#include "ui/replayed_flight.h"
#include "ui/view_replay.h"

namespace slopewise {

// In the order of time, the start first and the end last. What falls together within a third of a second is
// one mark with both names. What counts as wrong, the criteria say.
std::vector<ReplayMark> replay_marks(const ReplayedFlight& flight, const Criteria& criteria);

}  // namespace slopewise
