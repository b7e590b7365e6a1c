// What helps while a flight is flown: the path help and the call-outs, moved on with the ticks of a session.
#pragma once

#include "ui/flight_session.h"
#include "ui/view.h"

namespace slopewise {

// Call once a frame before its ticks: what the student switched on and calls for.
void watch_help(FlightSession& session, const Display& display, bool calls_for_help);

// Call once a tick, after the attempt has moved.
void advance_guidance(FlightSession& session);

// The cue in the picture; `now` is where the picture is seen from.
PathHelpView path_help_view(const FlightSession& session, const TrackPoint& now);

// One short line: why a call for help is not answered, or the call-out made just now. Nothing mostly.
void guidance_caption(const FlightSession& session, std::string& words);

}  // namespace slopewise
