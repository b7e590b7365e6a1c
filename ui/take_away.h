// What can be handed over of a flight as files, and their names.
#pragma once

#include "ui/debrief_state.h"
#include "ui/flight_session.h"
#include "ui/view.h"

namespace slopewise {

struct File {
    std::string name, media_type, text;
};

TakeAwayView take_away_view(const DebriefState& state);

// The file of that number among the view's offers. The flight must have been scored; there must be such a
// number.
File file_to_take(const FlightSession& session, int index);

// "slopewise-final_calm-2026-03-14-gates.csv": only letters, digits, underscores and dashes of the lesson's
// id, at most 40 of them, so that every file system takes it. Without a date where none is known.
std::string file_name(std::string_view lesson_id, std::int64_t started_unix_s, std::string_view what);

}  // namespace slopewise
