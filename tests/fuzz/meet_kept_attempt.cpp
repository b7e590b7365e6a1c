#include "debrief/sheet.h"
#include "logbook/index_row.h"
#include "tests/fixtures.h"
#include "tests/fuzz/demand.h"
#include "tests/fuzz/readers.h"
#include "tests/fuzz/shipped_texts.h"
#include "tests/fuzz/sums.h"

namespace slopewise::test {
namespace {

// As the logbook does, where it costs little.
void measure(KeptAttempt attempt) {
    if (attempt.recording.ticks > 2000 || !check_lesson(shipped(), attempt.recording.lesson, "x").empty())
        return;
    const Scenario scenario = scenario_of(shipped(), attempt.recording.lesson);
    for (int time = 0; time < 2; ++time) {
        const ReviewedFlight flight = review_kept(attempt, scenario, Criteria{});
        demand(sheet_html(flight, {}).size() > 1000, "what is kept has a sheet");
        const std::string row = index_row_text(index_row(attempt, flight));
        const std::optional<IndexRow> again = read_index_row(row);
        demand(again && index_row_text(*again) == row, "the row of an attempt is read");
        attempt.recording.final_hash ^= 1;  // so that the track that was kept is measured
    }
}

void meet_one(std::string_view text) {
    const Result<KeptAttempt> read = read_kept_attempt(text, "x");
    if (!demand_answer(read)) return;
    const std::string written = kept_attempt_text(*read.value);
    const Result<KeptAttempt> again = read_kept_attempt(written, "x");
    demand(again.ok(), "an attempt that was kept is read: " +
                           (again.ok() ? std::string() : to_text(again.problems.front())));
    demand(kept_attempt_text(*again.value) == written, "an attempt is kept the same again");
    const Result<std::string> id = kept_attempt_id(written, "x");
    demand(id.ok() && *id.value == read.value->id, "an attempt's identity is the one that it has");
    measure(*read.value);
}

}  // namespace

void meet_kept_attempt(std::string_view text) {
    meet_one(text);
    meet_one(attempt_with_sum(text));
}

std::vector<std::string> seeds_of_kept_attempt() { return {kept_attempt_text(short_attempt())}; }

}  // namespace slopewise::test
