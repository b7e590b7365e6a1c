// How a student comes on, over attempts in the order they were flown.
#pragma once

#include "debrief/table.h"
#include "progress/evidence_list.h"
#include "progress/sessions.h"

namespace slopewise {

struct Progress {
    std::vector<AttemptRow> rows;
    CusumParameters parameters;
    std::vector<double> median_bias_rad,
        median_scatter_rad;             // rolling, of the unaided; unknown at aided ones
    std::vector<double> learning_sums;  // unknown where an attempt is left out of the learning curve
    int signal_at = -1;                 // index of the attempt at which the learning curve signalled; -1: not
    int relapse_at = -1;                // index of an attempt after it at which a relapse showed; -1: not
    std::array<int, decision_names.size()> decisions{};  // how many of each: counts, not shares
    StopHint stop = StopHint::none;
    std::vector<EvidenceItem> evidence;
};

Progress progress_of(std::vector<AttemptRow> rows, const CusumParameters& parameters,
                     const DrillResults& drills);

// A row an attempt.
Table progress_table(const Progress& progress);

}  // namespace slopewise
