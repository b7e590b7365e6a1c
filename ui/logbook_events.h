// What the logbook's store answers, taken in: the list, what is kept, what another window changed, flights
// that were cut off, files that are taken in.
#pragma once

#include "ui/app.h"

namespace slopewise {

// Once a frame.
void take_logbook_events(App& app, Host& host);

// An attempt with its row, in the list and in the store; where that will not open, as one not kept.
void keep_whole(App& app, const KeptAttempt& attempt, const ReviewedFlight& reviewed, Host& host);

// Tries again with those that the store would not take.
void keep_unkept(App& app, Host& host);

// A row put in its place, or over the one of the same attempt; one taken out.
void put_row(Logbook& logbook, IndexRow row);
void take_row_out(Logbook& logbook, std::string_view id);

}  // namespace slopewise
