#include "logbook/index_row.h"

#include <cmath>

#include "tests/fixtures.h"
#include "tests/fuzz/demand.h"
#include "tests/fuzz/readers.h"
#include "tests/fuzz/shipped_texts.h"

namespace slopewise::test {

void meet_index_row(std::string_view text) {
    const std::optional<IndexRow> row = read_index_row(text);
    if (!row) return;
    const std::string written = index_row_text(*row);
    const std::optional<IndexRow> again = read_index_row(written);
    demand(again && index_row_text(*again) == written, "a row is written the same again");
    const AttemptRow& r = row->row;
    for (const double one : {r.duration_s, r.start_offset_rad, r.headwind_mps, r.path_share, r.path_rad.bias,
                             r.path_rad.scatter, r.path_rad.rms, r.speed_mps.bias})
        demand(std::isfinite(one), "a row's figures are numbers");
    demand(static_cast<std::size_t>(r.learning_result()) < learning_result_words.size(),
           "a row counts or not");
}

std::vector<std::string> seeds_of_index_row() {
    const KeptAttempt attempt = short_attempt();
    const Scenario scenario = scenario_of(shipped(), attempt.recording.lesson);
    return {index_row_text(index_row(attempt, review_kept(attempt, scenario, Criteria{})))};
}

}  // namespace slopewise::test
