// Progress over attempts: sessions, hints, and the list of evidence.
#include "progress/progress.h"

#include "base/units.h"
#include "lesson/approach_choice.h"
#include "tests/check.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

constexpr std::int64_t day = 24 * 3600, noon = 20000 * day;

AttemptRow attempt(std::int64_t at_s, bool passed) {
    AttemptRow row;
    row.lesson = "final_calm";
    row.started_unix_s = at_s;
    row.duration_s = 100.0;
    row.gate_reached = true;
    row.stable_at_gate = passed;
    row.decision = passed ? Decision::right : Decision::miss;
    row.path_rad.rms = 0.01;
    return row;
}

// Everything that the list asks of flights: 30 over three days, varied, three rightly gone around from.
std::vector<AttemptRow> complete_rows() {
    std::vector<AttemptRow> rows;
    for (int i = 0; i < 30; ++i) {
        AttemptRow row = attempt(noon + (i / 10) * 2 * day + (i % 10) * 300, true);
        row.start_offset_rad = rad_from_deg(i % 2 == 0 ? 0.7 : -0.7);
        row.headwind_mps = mps_from_kt(i % 3 * 7.5);
        row.lights_hidden = i == 12;
        row.airspeed_hidden = i == 13;
        if (i >= 27) {
            row.stable_at_gate = false;
            row.went_around = row.set_up_unstable = true;
        }
        rows.push_back(row);
    }
    return rows;
}

DrillResults complete_drills() {
    DrillResults drills;
    drills.lamps = {20, 0.95, 1.2};
    drills.pictures = {rad_from_deg(0.1), 0.85};
    drills.knowledge = true;
    return drills;
}

}  // namespace

// Rule R10: skill in visual approaches fades within months and is brought back by rehearsal; practice with
// gaps between it stays longer than practice in one piece (Arthur and others 2010, read in abstract). Four
// hours and two weeks: common practice, no source.
TEST_CASE("sessions: a new one begins after four hours, and a long gap is one of over two weeks") {
    const std::vector<AttemptRow> rows{attempt(noon, true), attempt(noon + 600, true),
                                       attempt(noon + day, true), attempt(0, true),
                                       attempt(noon + 20 * day, true)};
    CHECK(session_begins(rows) == std::vector<bool>{true, false, true, false, true});
    CHECK(long_gaps(rows) == std::vector<bool>{true, false, false, false, true});
    CHECK_FALSE(refresher_due(rows, noon + 34 * day));
    CHECK(refresher_due(rows, noon + 34 * day + 1));
    CHECK_FALSE(refresher_due({}, noon));
    CHECK_FALSE(refresher_due(std::vector<AttemptRow>{attempt(0, true)}, noon));  // at no known time
    CHECK(session_begins(std::vector<AttemptRow>{attempt(0, true), attempt(noon, true)}) ==
          std::vector<bool>{true, false});
}

// Rule R10: Roscoe 1971, Human Factors 13 (recalled): the first hours on the ground save most, and each later
// one less. Twenty minutes, ten approaches and three worse ones: common practice, no source.
TEST_CASE("sessions: stop after twenty minutes, ten approaches, or three each worse than the one before") {
    std::vector<AttemptRow> rows(9, attempt(noon, true));
    CHECK(stop_hint(rows) == StopHint::none);
    rows.push_back(attempt(noon, true));
    CHECK(stop_hint(rows) == StopHint::attempts);
    std::vector<AttemptRow> few(3, attempt(noon, true));
    for (AttemptRow& row : few) row.duration_s = 401.0;
    CHECK(stop_hint(few) == StopHint::minutes);
    std::vector<AttemptRow> worse(4, attempt(noon, true));
    for (std::size_t i = 0; i < 4; ++i) worse[i].path_rad.rms = 0.01 + 0.001 * static_cast<double>(i);
    CHECK(stop_hint(worse) == StopHint::worsening);
    rows.push_back(attempt(noon + day, true));
    CHECK(stop_hint(rows) == StopHint::none);  // a new session
    CHECK(stop_hint({}) == StopHint::none);
}

TEST_CASE("evidence: complete when all seven items are, and not without any one of them") {
    const auto words_of = [](const std::vector<AttemptRow>& rows, const DrillResults& drills) {
        return evidence_words(evidence_list(rows, {}, drills));
    };
    CHECK(words_of(complete_rows(), complete_drills()) == "evidence complete: for the instructor to judge");

    const std::string six = "6 of 7 items: evidence not yet complete";
    DrillResults drills = complete_drills();
    drills.lamps->median_s = 1.6;
    CHECK(words_of(complete_rows(), drills) == six);
    drills = complete_drills();
    drills.pictures.reset();
    CHECK(words_of(complete_rows(), drills) == six);
    drills = complete_drills();
    drills.knowledge = false;
    CHECK(words_of(complete_rows(), drills) == six);

    std::vector<AttemptRow> rows = complete_rows();
    for (AttemptRow& row : rows) row.start_offset_rad = 0.0;  // never varied
    CHECK(words_of(rows, complete_drills()) == six);
    rows = complete_rows();
    rows.back().decision = Decision::miss;
    CHECK(words_of(rows, complete_drills()) == six);
    rows = complete_rows();
    for (AttemptRow& row : rows) row.started_unix_s = noon;  // all on one day
    CHECK(words_of(rows, complete_drills()) == six);
    rows = complete_rows();
    for (AttemptRow& row : rows) row.airspeed_hidden = false;
    CHECK(words_of(rows, complete_drills()) == six);
}

TEST_CASE("evidence: each half of an item is asked for") {
    const auto complete = [](std::size_t item, const std::vector<AttemptRow>& rows,
                             const DrillResults& drills) {
        return evidence_list(rows, {}, drills)[item].complete;
    };
    const std::vector<AttemptRow> none;
    DrillResults drills;
    drills.lamps = {19, 0.95, 1.2};
    drills.pictures = {rad_from_deg(0.3), 0.85};
    CHECK_FALSE(complete(0, none, drills));
    CHECK_FALSE(complete(1, none, drills));
    drills.lamps = {20, 0.94, 1.2};
    drills.pictures = {rad_from_deg(0.1), 0.79};
    CHECK_FALSE(complete(0, none, drills));
    CHECK_FALSE(complete(1, none, drills));

    std::vector<AttemptRow> rows = complete_rows();
    for (AttemptRow& row : rows) row.headwind_mps = 0.0;  // starts are varied, winds are not
    CHECK_FALSE(complete(2, rows, {}));
    rows = complete_rows();
    rows.push_back(attempt(0, true));  // one without a gate, at a time that is not known
    rows.back().decision = Decision::none;
    CHECK(complete(3, rows, {}));
    CHECK(complete(4, rows, {}));
    rows[10].decision = rows[20].decision = Decision::miss;  // the first of two of three days
    CHECK_FALSE(complete(4, rows, {}));
    rows = complete_rows();
    rows[12].lights_hidden = false;
    CHECK_FALSE(complete(5, rows, {}));
    rows = complete_rows();
    for (AttemptRow& row : rows) row.headwind_mps = std::min(row.headwind_mps, mps_from_kt(10.0));
    CHECK_FALSE(complete(5, rows, {}));
}

TEST_CASE("evidence: nothing that is said of it speaks of being ready, or of landing") {
    for (const auto& rows : {complete_rows(), std::vector<AttemptRow>{}}) {
        const auto items = evidence_list(rows, {}, complete_drills());
        std::string all = evidence_words(items);
        for (const EvidenceItem& item : items) all += item.what + item.found;
        CHECK(all.find("ready") == std::string::npos);
        CHECK(all.find("land") == std::string::npos);
    }
}

TEST_CASE("learning: success, failure, and what says nothing of the approach") {
    AttemptRow row = attempt(noon, true);
    CHECK(row.learning_result() == LearningResult::success);
    row.stable_at_gate = false;
    row.went_around = true;  // rightly, from an approach that could have been made stable
    CHECK(row.learning_result() == LearningResult::failure);
    row.set_up_unstable = true;  // or could not
    CHECK(row.learning_result() == LearningResult::left_out);
    row.decision = Decision::miss;
    CHECK(row.learning_result() == LearningResult::failure);
    row.stable_at_gate = true;
    row.set_up_unstable = false;
    row.decision = Decision::cautious;
    CHECK(row.learning_result() == LearningResult::left_out);
    row.gate_reached = row.stable_at_gate = false;
    row.decision = Decision::none;
    CHECK(row.learning_result() == LearningResult::failure);  // gone around above the gate
    row.went_around = false;
    CHECK(row.learning_result() == LearningResult::left_out);
}

TEST_CASE("learning: a right go-around from a start that could not be mended changes no sum") {
    std::vector<AttemptRow> rows(9, attempt(noon, true));
    rows[4].stable_at_gate = false;
    rows[4].went_around = rows[4].set_up_unstable = true;
    const Progress progress = progress_of(rows, {}, {});
    CHECK(std::isnan(progress.learning_sums[4]));
    CHECK_NEAR(progress.learning_sums[5] - progress.learning_sums[3], pass_score({}), 1e-12);
    CHECK(progress.signal_at == 8);  // the eighth that counts
    CHECK(progress.decisions[static_cast<std::size_t>(Decision::right)] == 9);
    CHECK(csv_text(progress_table(progress)).find("in_learning_curve,learning_sum\n") != std::string::npos);
    CHECK(evidence_list(rows, {}, {})[2].found.starts_with("9 unaided, 8 count"));
}

TEST_CASE("learning: what a lesson hides is told of the attempt, and so is a start at the wrong speed") {
    Lesson lesson = lesson_of({1, StartSide::on, 0.0}, shipped_scenario("final_calm").lesson);
    lesson.failures[0].kind = Failure::Kind::lights_out;
    lesson.failures[1].kind = Failure::Kind::airspeed_blank;
    lesson.failure_count = 2;
    const auto row_at = [&](double kt) {
        lesson.start.cas_mps = mps_from_kt(kt);
        const Scenario scenario = scenario_of(shipped(), lesson);
        const Flight flight = fly_good(scenario, 1);
        return attempt_row(review_flight(scenario, {}, flight.track, flight.attempt.end), {});
    };
    const AttemptRow row = row_at(65.0);
    CHECK(row.lights_hidden);
    CHECK(row.airspeed_hidden);
    CHECK_FALSE(row.set_up_unstable);
    CHECK(row_at(82.0).set_up_unstable);
    CHECK(row_at(54.0).set_up_unstable);
}

TEST_CASE("learning: only a start out of the limits close above the gate is one set up unstable") {
    const auto row_of = [](int distance_nm, double offset_deg) {
        Lesson lesson = lesson_of({distance_nm, StartSide::on, 0.0}, shipped_scenario("final_calm").lesson);
        lesson.start.offset_rad = rad_from_deg(offset_deg);
        const Scenario scenario = scenario_of(shipped(), lesson);
        const Flight flight = fly_good(scenario, 1);
        return attempt_row(review_flight(scenario, {}, flight.track, flight.attempt.end), {});
    };
    const AttemptRow close_and_high = row_of(1, 1.2);
    CHECK(close_and_high.set_up_unstable);
    CHECK(close_and_high.went_around);
    CHECK(close_and_high.learning_result() == LearningResult::left_out);
    CHECK_FALSE(row_of(1, 0.0).set_up_unstable);
    const AttemptRow far_and_high = row_of(3, 1.2);
    CHECK_FALSE(far_and_high.set_up_unstable);
    CHECK(far_and_high.learning_result() == LearningResult::success);
}

TEST_CASE("progress: aided attempts stand in the table but count in no trend") {
    std::vector<AttemptRow> rows = complete_rows();
    rows[2].unaided = false;
    rows[2].path_rad.bias = 1.0;
    const Progress progress = progress_of(rows, {}, {});
    CHECK(std::isnan(progress.median_bias_rad[2]));
    CHECK(std::isnan(progress.learning_sums[2]));
    CHECK(progress.median_bias_rad[4] == 0.0);
    CHECK(progress.signal_at == 8);    // the eighth unaided pass is the ninth attempt
    CHECK(progress.relapse_at == -1);  // the last three were set up unstable and rightly gone around from
    for (std::size_t i = 27; i < 30; ++i) rows[i].decision = Decision::miss;
    CHECK(progress_of(rows, {}, {}).relapse_at == 29);  // pressed on with instead
    const Table table = progress_table(progress);
    CHECK(table.rows.size() == 30);
    CHECK(csv_text(table).find("\nfinal_calm,3,") != std::string::npos);
}
