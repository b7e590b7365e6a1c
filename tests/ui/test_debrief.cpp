// What the program does after an attempt: the estimate before the sheet, how much the sheet tells, the
// criteria kept and held to, and files that say the same as the command line would of the same recording.
#include <doctest/doctest.h>

#include "data/criteria_file.h"
#include "data/recording_file.h"
#include "data/review_json.h"
#include "debrief/estimate.h"
#include "debrief/sheet.h"
#include "tests/check.h"
#include "tests/ui/test_host.h"
#include "ui/app.h"
#include "ui/criteria_fields.h"
#include "ui/judgement_view.h"
#include "ui/make_view.h"
#include "ui/take_away.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

// One mile, `pull` on the stick now and then, as far as 50 ft; then a frame's worth of what follows.
App flown(TestHost& host, double pull = 0.0) {
    App app = make_app(shipped(), host);
    apply(app, ChooseDistance{1}, host);
    apply(app, StartFlight{}, host);
    for (int i = 0; i < 120 * 400 && !app.flight->reviewed; ++i) {
        app.hands.at.stick = i / 240 % 4 == 0 ? pull : 0.0;
        tick_session(*app.flight, quantize(app.hands.at));
    }
    REQUIRE(app.flight->reviewed);
    app.screen = Screen::estimate;
    return app;
}

void press_key(App& app, TestHost& host, Key key) {
    RawInput raw;
    raw.pressed[static_cast<std::size_t>(key)] = true;
    for (const Action& action : read_shortcuts(raw, app.screen)) apply(app, action, host);
}

std::string taken(App& app, TestHost& host, std::string_view name) {
    const TakeAwayView view = take_away_view(app.debrief);
    for (std::size_t i = 0; i < view.offers.size(); ++i) {
        if (view.offers[i].name != name) continue;
        apply(app, TakeAway{static_cast<int>(i)}, host);
        return host.file;
    }
    FAIL("nothing is offered as ", std::string(name));
    return "";
}

}  // namespace

TEST_CASE("estimate: keys 1 to 3 answer one question after another, then the sheet tells both sides") {
    TestHost host;
    App app = flown(host);
    const View asked = make_view(app);
    REQUIRE(asked.estimate.questions.size() == 3);
    CHECK(asked.mirror.screen.find("Now: The path was mostly: 1 high 2 on 3 low") != std::string::npos);
    press_key(app, host, Key::one);
    press_key(app, host, Key::two);
    CHECK(app.screen == Screen::estimate);
    CHECK_FALSE(app.flight->recording.circumstances.estimate);
    press_key(app, host, Key::three);  // the third question has two answers
    CHECK(app.screen == Screen::estimate);
    press_key(app, host, Key::two);
    CHECK(app.screen == Screen::summary);
    REQUIRE(app.flight->recording.circumstances.estimate);
    const Estimate said = *app.flight->recording.circumstances.estimate;
    CHECK(said.path == Estimate::Path::high);
    CHECK(said.speed == Estimate::Speed::on);
    CHECK_FALSE(said.stable_at_gate);
    const std::string words = make_view(app).summary.estimate;
    CHECK(words == estimate_sentence(said, *app.flight->reviewed));
    CHECK(words.starts_with("You said: high, on speed, not stable. It was: "));
}

TEST_CASE("estimate: for five seconds after the attempt nothing is asked and no key answers") {
    TestHost host;
    App app = flown(host);
    app.hands.last_wall_s = 100.0;
    app.debrief.questions_from_s = 100.0 + blank_s;
    CHECK(make_view(app).mirror.screen.find("The path was mostly") == std::string::npos);
    press_key(app, host, Key::one);
    CHECK(app.debrief.estimate[0] == -1);
    app.hands.last_wall_s += blank_s;
    CHECK(make_view(app).mirror.screen.find("Now: The path was mostly") != std::string::npos);
    press_key(app, host, Key::one);
    CHECK(app.debrief.estimate[0] == 0);
}

TEST_CASE("estimate: an answer can be changed while the others are open") {
    TestHost host;
    App app = flown(host);
    apply(app, AnswerEstimate{1, 0}, host);
    apply(app, AnswerEstimate{1, 2}, host);
    apply(app, AnswerEstimate{0, 2}, host);
    CHECK(make_view(app).estimate.questions[1].chosen == 2);
    apply(app, AnswerEstimate{2, 0}, host);
    REQUIRE(app.flight->recording.circumstances.estimate);
    CHECK(app.flight->recording.circumstances.estimate->speed == Estimate::Speed::slow);
    CHECK(app.flight->recording.circumstances.estimate->path == Estimate::Path::low);
    CHECK(app.flight->recording.circumstances.estimate->stable_at_gate);
}

TEST_CASE("estimate: it can be passed over, and then nothing is recorded and the sheet says nothing of it") {
    TestHost host;
    App app = flown(host);
    press_key(app, host, Key::one);
    press_key(app, host, Key::escape);
    CHECK(app.screen == Screen::summary);
    CHECK_FALSE(app.flight->recording.circumstances.estimate);
    CHECK(make_view(app).summary.estimate == "");
}

TEST_CASE("estimate: who never came down to the gate is asked two questions") {
    TestHost host;
    App app = make_app(shipped(), host);
    apply(app, StartFlight{}, host);
    apply(app, GoAround{}, host);
    while (!app.flight->reviewed) tick_session(*app.flight, quantize(app.hands.at));
    app.screen = Screen::estimate;
    CHECK(make_view(app).estimate.questions.size() == 2);
    press_key(app, host, Key::two);
    press_key(app, host, Key::two);
    CHECK(app.screen == Screen::summary);
    const SummaryView summary = make_view(app).summary;
    CHECK(summary.estimate.ends_with(" of 2."));
    CHECK_FALSE(summary.decision.known);
    CHECK(summary.decision.words == "The gate at 300 ft was not reached.");
}

TEST_CASE("estimate: flown on and back, it is not asked again, and the go-around is then measured") {
    TestHost host;
    App app = flown(host);
    apply(app, SkipEstimate{}, host);
    apply(app, FlyOn{}, host);
    CHECK(app.screen == Screen::flight);
    for (int i = 0; i < 240; ++i) tick_session(*app.flight, quantize(app.hands.at));
    const std::size_t before = app.flight->reviewed->track.points.size();
    apply(app, OpenSummary{}, host);
    CHECK(app.screen == Screen::summary);
    CHECK(app.flight->reviewed->track.points.size() > before);
}

TEST_CASE("sheet: in full for six runs, then short, and every third time over the last three") {
    DebriefState state;
    for (int earlier = 0; earlier < 15; ++earlier) {
        CAPTURE(earlier);
        state.earlier_runs = earlier;
        const SheetDetail due = earlier < 6              ? SheetDetail::full
                                : (earlier - 5) % 3 == 0 ? SheetDetail::last_three
                                                         : SheetDetail::brief;
        CHECK(sheet_detail(state) == due);
        state.detail_asked = true;
        CHECK(sheet_detail(state) == SheetDetail::full);
        state.detail_asked = false;
    }
}

TEST_CASE("sheet: D opens the detail of a short one, for this attempt alone") {
    TestHost host;
    App app = flown(host);
    app.debrief.earlier_runs = 8;
    app.debrief.earlier_rows.resize(8);
    for (AttemptRow& row : app.debrief.earlier_rows) row.priority_fault = "ducking_under";
    apply(app, SkipEstimate{}, host);
    const View brief = make_view(app);
    CHECK(brief.summary.detail == SheetDetail::last_three);
    CHECK(brief.summary.last_runs.table.rows.size() == 3);
    CHECK(brief.summary.last_runs.table.rows.back()[0] == "This run");
    CHECK(brief.summary.fault.title == find_fault("ducking_under")->title);
    CHECK(brief.summary.last_runs.most_often == "Most often: Ducking under, in 2 of 3.");
    CHECK(brief.mirror.screen.find("Energy: share of time") == std::string::npos);
    press_key(app, host, Key::d);
    const View whole = make_view(app);
    CHECK(whole.summary.detail == SheetDetail::full);
    CHECK(whole.mirror.screen.find("Energy: share of time") != std::string::npos);
    apply(app, RestartSame{}, host);
    CHECK_FALSE(app.debrief.detail_asked);
}

TEST_CASE("sheet: its judgement is the debrief's, word for word") {
    TestHost host;
    App app = flown(host, 0.35);
    apply(app, SkipEstimate{}, host);
    const View view = make_view(app);
    const ReviewedFlight& flight = *app.flight->reviewed;
    CHECK(view.summary.strongest == strongest_sentence(flight.review.summary));
    REQUIRE(view.summary.gates.size() == flight.review.stability.size());
    for (std::size_t i = 0; i < view.summary.gates.size(); ++i)
        if (view.summary.gates[i].reached)
            CHECK(view.summary.gates[i].stability == stability_words(flight.review.stability[i]));
    REQUIRE(flight.diagnosis.priority() != nullptr);
    CHECK(view.summary.fault.title == flight.diagnosis.priority()->fault->title);
    CHECK(view.summary.fault.moments_nm.empty() == flight.diagnosis.priority()->evidence.moments.empty());
    CHECK(view.mirror.screen.find("To work on: " + view.summary.fault.title) != std::string::npos);
    CHECK(view.mirror.screen.find("Held to:") != std::string::npos);
}

TEST_CASE("files: each is what the command line makes of the same recording") {
    TestHost host;
    App app = flown(host, 0.2);
    for (const int answer : {0, 1, 1}) apply(app, AnswerEstimate{-1, answer}, host);
    const Result<Recording> recording = read_recording(taken(app, host, "Recording (JSON)"), "test");
    REQUIRE(recording.ok());
    const ReviewedFlight again =
        review_recording(*recording.value, scenario_of(app.catalog, recording.value->lesson), Criteria{});
    CHECK(again.first_diverged_tick == -1);
    CHECK(taken(app, host, "Figures (JSON)") == review_json(again));
    CHECK(taken(app, host, "Gates (CSV)") == csv_text(gate_table(again)));
    CHECK(taken(app, host, "Whole run (CSV)") == csv_text(run_table(again)));
    CHECK(taken(app, host, "Bands (CSV)") == csv_text(band_table(again)));
    CHECK(taken(app, host, "Answers (CSV)") == csv_text(answer_table(again)));
    CHECK(taken(app, host, "Set-up (CSV)") == csv_text(setup_table(again)));
    CHECK(taken(app, host, "What the columns mean (CSV)") == flight_dictionary(again));
    const std::string sheet = taken(app, host, "Sheet to print");
    CHECK(sheet == sheet_html(again, sheet_facts(recording.value->circumstances, again)));
    CHECK(sheet.find("You said: high, on speed, not stable.") != std::string::npos);
    CHECK(sheet.find("Held to: 500 ft and above") != std::string::npos);
    CHECK(make_view(app).summary.estimate.starts_with("You said"));
}

TEST_CASE("files: their names hold nothing that a file system refuses") {
    CHECK(file_name("final_calm", 1773446400, "gates.csv") == "slopewise-final_calm-2026-03-14-gates.csv");
    CHECK(file_name("a/b\\c:*?\"<>|. ", 0, "run.csv") == "slopewise-a_b_c_________-run.csv");
    CHECK(file_name(std::string(300, 'x'), 0, "run.csv").size() == 10 + 40 + 8);
}

TEST_CASE("criteria: what the instructor sets is kept, held to on the next flight and printed") {
    TestHost host;
    App app = make_app(shipped(), host);
    apply(app, OpenScreenAndHelp{}, host);
    apply(app, OpenCriteria{}, host);
    CHECK(make_view(app).criteria.usual);
    apply(app, SetCriterion{6, 0.25}, host);  // the path at 300 ft
    CHECK_NEAR(deg_from_rad(app.settings.school.criteria.decision.path_rad), 0.25, 1e-9);
    CHECK_FALSE(make_view(app).criteria.usual);
    App again = make_app(shipped(), host);
    CHECK(criteria_text(again.settings.school.criteria) == criteria_text(app.settings.school.criteria));
    CHECK(again.notice == "");
    apply(again, StartFlight{}, host);
    CHECK_NEAR(deg_from_rad(again.flight->criteria.decision.path_rad), 0.25, 1e-6);
    apply(again, GoAround{}, host);
    while (!again.flight->reviewed) tick_session(*again.flight, quantize(again.hands.at));
    CHECK(taken(again, host, "Sheet to print").find("300 ft: path 0.25") != std::string::npos);
    apply(again, CloseCriteria{}, host);
    CHECK(again.screen == Screen::screen_and_help);
    apply(again, ResetCriteria{}, host);
    CHECK(criteria_text(again.settings.school.criteria) == criteria_text(Criteria{}));
}

TEST_CASE("criteria: at the ends of their ranges all of them are kept and read again") {
    for (const double end : {-1e6, 1e6}) {
        TestHost host;
        App app = make_app(shipped(), host);
        const CriteriaView view = criteria_view(Criteria{});
        const int count = view.groups.back().first + static_cast<int>(view.groups.back().fields.size());
        CHECK(count == 26);
        for (int i = 0; i < count; ++i) apply(app, SetCriterion{i, end}, host);
        apply(app, SetCriterion{count, end}, host);  // there is none of that number
        App again = make_app(shipped(), host);
        CHECK(again.notice == "");
        CHECK(criteria_text(again.settings.school.criteria) == criteria_text(app.settings.school.criteria));
        const CriteriaView kept = criteria_view(again.settings.school.criteria);
        for (const auto& group : kept.groups)
            for (const auto& field : group.fields)
                CHECK_NEAR(field.number, end > 0 ? field.most : field.least, 1e-6);
    }
}
