// The student's estimate before the sheet opens: what is asked, and what becomes of the answers.
#pragma once

#include "ui/debrief_state.h"
#include "ui/flight_session.h"
#include "ui/view.h"

namespace slopewise {

EstimateView estimate_view(const FlightSession& session, const DebriefState& state, double now_s);

// Notes an answer, if there is such a one. `question` -1: the first without an answer. True when with it all
// are answered; the session's recording then holds the estimate.
bool answer_estimate(int question, int answer, FlightSession& session, DebriefState& state);

}  // namespace slopewise
