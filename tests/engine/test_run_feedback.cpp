// How much a sheet tells after so many attempts, and what the last three had in common.
#include <doctest/doctest.h>

#include <array>

#include "debrief/sheet_facts.h"
#include "progress/run_feedback.h"

using namespace slopewise;

namespace {

AttemptRow row(const char* fault, double path_rad = 0.0) {
    AttemptRow made;
    made.priority_fault = fault;
    made.path_rad.bias = path_rad;
    return made;
}

}  // namespace

// Rule R7: Salmoni, Schmidt & Walter 1984, Psychological Bulletin 95 (recalled): feedback after every trial
// helps the practice and harms what stays, a summary after several does not. Six and three: common practice,
// no source.
TEST_CASE("feedback: six whole sheets, then two short ones and one over three, again and again") {
    constexpr std::array wanted{RunFeedback::whole, RunFeedback::whole, RunFeedback::whole,
                                RunFeedback::whole, RunFeedback::whole, RunFeedback::whole,
                                RunFeedback::brief, RunFeedback::brief, RunFeedback::last_three,
                                RunFeedback::brief, RunFeedback::brief, RunFeedback::last_three};
    for (std::size_t earlier = 0; earlier < wanted.size(); ++earlier) {
        CAPTURE(earlier);
        CHECK(run_feedback(static_cast<int>(earlier)) == wanted[earlier]);
    }
    CHECK(run_feedback(1000) == RunFeedback::brief);
    CHECK(run_feedback(1001) == RunFeedback::last_three);
}

// Rule R7: the summary of Salmoni, Schmidt & Walter 1984, as above, is of the last three runs.
TEST_CASE("feedback: of many rows the last two stand before this one, in their order") {
    const std::array earlier{row("a", 1.0), row("b", 2.0), row("c", 3.0)};
    const LastRuns last = last_runs(earlier, row("d", 4.0));
    REQUIRE(last.rows.size() == 3);
    CHECK(last.rows[0].path_rad.bias == 2.0);
    CHECK(last.rows[1].path_rad.bias == 3.0);
    CHECK(last.rows[2].path_rad.bias == 4.0);
}

TEST_CASE("feedback: the fault of the most runs is named, of equals the latest, and none where none was") {
    const std::array twice{row("late_power"), row("balloon")};
    CHECK(last_runs(twice, row("late_power")).fault == "late_power");
    CHECK(last_runs(twice, row("late_power")).fault_times == 2);
    CHECK(last_runs(twice, row("too_fast")).fault == "too_fast");
    CHECK(last_runs(twice, row("too_fast")).fault_times == 1);
    CHECK(last_runs(twice, row("")).fault == "balloon");
    const std::array clean{row(""), row("")};
    CHECK(last_runs(clean, row("")).fault == "");
    CHECK(last_runs(clean, row("")).fault_times == 0);
    CHECK(last_runs({}, row("balloon")).rows.size() == 1);
}

// Dates of ISO 8601's calendar; seconds by GNU date: date -u -d 2000-02-29 +%s.
TEST_CASE("sheet: the date is the day of the calendar in UTC") {
    CHECK(date_text(0) == "");
    CHECK(date_text(1) == "1970-01-01");
    CHECK(date_text(951782400) == "2000-02-29");
    CHECK(date_text(951868799) == "2000-02-29");
    CHECK(date_text(951868800) == "2000-03-01");
    CHECK(date_text(1709164800) == "2024-02-29");
    CHECK(date_text(1798761599) == "2026-12-31");
    CHECK(date_text(4107542400) == "2100-03-01");
    CHECK(date_text(-1) == "1969-12-31");
}
