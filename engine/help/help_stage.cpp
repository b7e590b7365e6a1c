#include "help/help_stage.h"

#include <algorithm>

namespace slopewise {
namespace {

// The runs since the last step, the latest four of them.
using Runs = std::span<const AttemptRow>;

bool steps_forward(Runs recent) {
    return std::ranges::count_if(recent, [](const AttemptRow& run) {
               return run.path_share >= good_share;
           }) >= good_runs_forward;
}

bool steps_back(Runs recent) {
    return recent.size() >= bad_runs_back &&
           std::ranges::all_of(recent.last(bad_runs_back),
                               [](const AttemptRow& run) { return run.path_share < bad_share; });
}

}  // namespace

int help_stage(std::span<const AttemptRow> rows) {
    int stage = 0;
    std::size_t since = 0;  // the last step
    for (std::size_t end = 1; end <= rows.size(); ++end) {
        const Runs recent =
            rows.subspan(since, end - since).last(std::min<std::size_t>(end - since, runs_looked_at));
        const int step = (steps_forward(recent) ? 1 : 0) - (steps_back(recent) ? 1 : 0);
        if (step == 0) continue;
        stage = std::clamp(stage + step, 0, last_help_stage);
        since = end;
    }
    return stage;
}

bool is_unaided_run(std::size_t earlier_runs, int stage) {
    return stage < last_help_stage && (earlier_runs + 1) % unaided_every == 0;
}

HelpPlan help_plan(std::span<const AttemptRow> rows, bool by_itself) {
    const int stage = help_stage(rows);
    return {by_itself, stage, is_unaided_run(rows.size(), stage)};
}

}  // namespace slopewise
