// What the debrief makes of an attempt, in words for the sheet: the decision, the one fault, the last runs.
#pragma once

#include "progress/run_feedback.h"
#include "ui/debrief_state.h"
#include "ui/flight_session.h"
#include "ui/view.h"

namespace slopewise {

DecisionView decision_view(const ReviewedFlight& flight);

FaultView fault_view(const ReviewedFlight& flight);

// How much the sheet tells: what is due after so many attempts, or all of it if asked for.
SheetDetail sheet_detail(const DebriefState& state);

LastRunsView last_runs_view(const LastRuns& last);

// All of these into the sheet, and the estimate.
void judge(const FlightSession& session, const DebriefState& state, SummaryView& view);

}  // namespace slopewise
