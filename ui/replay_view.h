// What a replay shows: the view from the seat as the flight screen's, and the attempt from the side.
#pragma once

#include "ui/replay_session.h"
#include "ui/settings.h"
#include "ui/view.h"

namespace slopewise {

// What stands through a replay: names, marks, the whole attempts.
void replay_words(const ReplaySession& session, const Settings& settings, View& view);

// All the rest, written over what the view held.
void replay_view(const ReplaySession& session, const Settings& settings, View& view);

}  // namespace slopewise
