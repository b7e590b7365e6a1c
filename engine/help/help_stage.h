// How far the help has faded for a student, and which runs are flown without any: by results, never by time.
#pragma once

#include <span>

#include "help/path_help.h"
#include "progress/attempt_row.h"

namespace slopewise {

// A stage forward after three of the last four runs with at least 70 % of the time in tolerance of the path,
// one back after two in a row below 40 %; what was counted for one step is not counted for the next. (The
// difficulty that teaches most moves with the skill: Guadagnoli & Lee 2004; read in abstract. The figures are
// common practice, no source.)
inline constexpr int runs_looked_at = 4, good_runs_forward = 3, bad_runs_back = 2;
inline constexpr double good_share = 0.70, bad_share = 0.40;

// From 0 on, over the runs of one student, the oldest first. Runs of one group of lessons have a stage of
// their own when only those are given.
int help_stage(std::span<const AttemptRow> rows);

// Before the last stage every third run is a probe: it shows what the student does without, and only unaided
// runs count in trends. (Alternating with unaided trials keeps what guidance gives: Park, Shea & Wright 2000;
// recalled. Every third: common practice, no source.)
inline constexpr int unaided_every = 3;
bool is_unaided_run(std::size_t earlier_runs, int stage);

// For the next run after these.
HelpPlan help_plan(std::span<const AttemptRow> rows, bool by_itself);

}  // namespace slopewise
