#include "progress/run_feedback.h"

#include <algorithm>

namespace slopewise {

RunFeedback run_feedback(int earlier_runs) {
    if (earlier_runs < whole_runs) return RunFeedback::whole;
    return (earlier_runs - whole_runs + 1) % summed_runs == 0 ? RunFeedback::last_three : RunFeedback::brief;
}

LastRuns last_runs(std::span<const AttemptRow> earlier, const AttemptRow& now) {
    LastRuns last;
    const std::size_t before = std::min<std::size_t>(earlier.size(), summed_runs - 1);
    last.rows.assign(earlier.end() - static_cast<std::ptrdiff_t>(before), earlier.end());
    last.rows.push_back(now);
    for (const AttemptRow& row : last.rows) {
        if (row.priority_fault.empty()) continue;
        const auto times =
            static_cast<int>(std::ranges::count(last.rows, row.priority_fault, &AttemptRow::priority_fault));
        if (times < last.fault_times) continue;
        last.fault = row.priority_fault;
        last.fault_times = times;
    }
    return last;
}

}  // namespace slopewise
