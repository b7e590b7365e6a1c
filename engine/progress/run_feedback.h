// How much an attempt's sheet tells at once: much at first, then less, so that the student comes to do
// without. (Summary knowledge of results; Salmoni, Schmidt & Walter 1984: frequent feedback helps the
// practice and harms what stays. The numbers six and three are common practice, no source.)
#pragma once

#include <span>
#include <string>
#include <vector>

#include "progress/attempt_row.h"

namespace slopewise {

enum class RunFeedback {
    whole,       // the sheet in full
    brief,       // how it ended, what was strongest, the decision and the one fault
    last_three,  // this attempt and the two before it, side by side
};

inline constexpr int whole_runs = 6;   // of a lesson, by one student
inline constexpr int summed_runs = 3;  // after those, every third attempt sums up the last three

// `earlier_runs`: attempts of this lesson by this student before this one, 0 or more.
RunFeedback run_feedback(int earlier_runs);

struct LastRuns {
    std::vector<AttemptRow> rows;  // at most three, the oldest first; this attempt is the last
    std::string fault;             // id of the priority fault that came most often; of equals the latest
    int fault_times = 0;           // 0: none had one
};

// `earlier`: attempts of the same lesson by the same student, the oldest first.
LastRuns last_runs(std::span<const AttemptRow> earlier, const AttemptRow& now);

}  // namespace slopewise
