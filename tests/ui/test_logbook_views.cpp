// What the logbook's two sheets are given and told as text, what a wish does to them, and how it grows with
// the number of attempts.
#include <doctest/doctest.h>

#include <algorithm>
#include <string>

#include "tests/check.h"
#include "tests/ui/logbook_rows.h"
#include "tests/ui/test_host.h"
#include "ui/app.h"
#include "ui/civil_time.h"
#include "ui/logbook_mirror.h"
#include "ui/logbook_views.h"
#include "ui/make_view.h"
#include "ui/student_name.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

const std::string student = "Kestrel 7";

LogbookView view_of(const Logbook& logbook, const LogbookChoice& choice = {}) {
    LogbookView view;
    logbook_view(logbook, shipped(), student, choice, view);
    return view;
}

ProgressView progress_of_logbook(const Logbook& logbook, const LogbookChoice& choice = {}) {
    ProgressView view;
    progress_view(logbook, shipped(), student, choice, view);
    return view;
}

std::size_t count_of(const std::string& text, const std::string& words) {
    std::size_t count = 0;
    for (std::size_t at = text.find(words); at != std::string::npos; at = text.find(words, at + 1)) ++count;
    return count;
}

// An app at the logbook with so many attempts of one student.
App app_with(int attempts, TestHost& host) {
    App app = make_app(shipped(), host);
    app.settings.student = student;
    app.logbook = invented_logbook(attempts);
    for (const IndexRow& row : app.logbook.rows) host.store.rows[row.id] = index_row_text(row);
    apply(app, OpenLogbook{}, host);
    return app;
}

}  // namespace

// The seconds are those that GNU date prints for these dates.
TEST_CASE("civil time: dates and times of day are those of the calendar, before 1970 and on leap days too") {
    CHECK(when_words(1795701900, 0) == "26 Nov 2026, 14:05");
    CHECK(when_words(1795701900, 3600) == "26 Nov 2026, 15:05");
    CHECK(when_words(1709251199, 0) == "29 Feb 2024, 23:59");
    CHECK(when_words(1709251199, 60) == "1 Mar 2024, 00:00");
    CHECK(date_words(-2203891200, 0) == "1 Mar 1900");
    CHECK(clock_words(-1, 0) == "23:59");
    CHECK(when_words(0, 3600) == "time not known");
}

TEST_CASE("student: a name is tidied, and of at most forty letters whatever their bytes") {
    CHECK(tidy_student("  Kestrel \t  7\n") == "Kestrel 7");
    CHECK(tidy_student(" \r\n") == "");
    std::string long_name;
    for (int i = 0; i < 50; ++i) long_name += "\u00e9";
    CHECK(tidy_student(long_name).size() == 80);
    CHECK(student_words("") == "No name");
}

TEST_CASE("student: the name is kept with the settings, whatever stands in it") {
    for (const std::string name : {"Kestrel 7", "a \"quoted\" \\ name", "\u00e9\u4e2d", ""}) {
        CAPTURE(name);
        Settings settings;
        settings.student = name;
        const KeptSettings read = parse_settings(settings_text(settings));
        REQUIRE(read.problems.empty());
        CHECK(read.settings.student == name);
    }
}

TEST_CASE("logbook view: newest first, with the time on the wall, the figures and the fault by its title") {
    Logbook logbook = invented_logbook(3);
    logbook.rows[2].cut_off = true;
    logbook.rows[1].row.gate_reached = false;
    const LogbookView view = view_of(logbook, {"", "", 0, 3600});
    REQUIRE(view.rows.size() == 3);
    CHECK(view.count == "3 attempts kept");
    const LogbookRowView& newest = view.rows[0];
    CHECK(newest.id == logbook.rows[2].id);
    CHECK(newest.when == "26 Nov 2026, 15:25");
    CHECK(newest.lesson == "Final from above the path");
    CHECK(newest.marks == "cut off");
    CHECK(newest.path_bias == "+0.30\u00b0");
    CHECK(newest.path_scatter == "\u00b10.40\u00b0");
    CHECK(newest.speed_bias == "\u22122.1 kt");
    CHECK(newest.speed_scatter == "\u00b13.0 kt");
    CHECK(newest.stability == "not stable");
    CHECK(newest.decision == "miss");
    CHECK(newest.fault == "Ducking under");
    CHECK(view.rows[1].stability == "not reached");
    CHECK(view.rows[1].fault == "none found");
    CHECK(view.chosen == 0);
    CHECK(view.earlier == logbook.rows[1].id);
    CHECK(view_of(logbook, {logbook.rows[0].id, "", 0, 0}).earlier.empty());
}

TEST_CASE("logbook view: an unknown lesson keeps its id, and others' attempts are not shown") {
    Logbook logbook = invented_logbook(2);
    logbook.rows[0].row.lesson = "of_another_school";
    logbook.rows[1].student = "Heron 2";
    const LogbookView view = view_of(logbook);
    REQUIRE(view.rows.size() == 1);
    CHECK(view.rows[0].lesson == "of_another_school");
    CHECK(view.students.size() == 2);
}

TEST_CASE("logbook view: what was deleted stands apart, and a store that is shut says so") {
    Logbook logbook = invented_logbook(3);
    logbook.rows[1].deleted_unix_s = first_unix_s;
    logbook.standing = Logbook::Standing::refused;
    const LogbookView view = view_of(logbook);
    CHECK(view.rows.size() == 2);
    REQUIRE(view.deleted.size() == 1);
    CHECK(view.deleted[0].id == logbook.rows[1].id);
    CHECK(view.standing == "Attempts cannot be kept on this device now.");
}

TEST_CASE("logbook view: of a file's problems five are told, and how many more there are") {
    Logbook logbook = invented_logbook(0);
    logbook.import = Logbook::Import{};
    logbook.import->file = "chosen.jsonl";
    logbook.import->running = true;
    logbook.import->line = 9;
    for (int i = 1; i <= 8; ++i)
        logbook.import->problems.push_back({"chosen.jsonl", i, "", "is no attempt", ""});
    const LogbookView view = view_of(logbook);
    REQUIRE(view.problems.size() == 6);
    CHECK(view.problems[0].find("chosen.jsonl:1:") == 0);
    CHECK(view.problems[5] == "and 3 more");
    CHECK(view.importing.find("9 lines read") != std::string::npos);
}

TEST_CASE("logbook view: its rows are made again only when the logbook, the student or the clock differs") {
    Logbook logbook = invented_logbook(20);
    const Catalog catalog = shipped();
    LogbookView view;
    logbook_view(logbook, catalog, student, {}, view);
    view.rows[0].lesson = "untouched";
    logbook_view(logbook, catalog, student, {logbook.rows[3].id, "", 0, 0}, view);
    CHECK(view.rows[0].lesson == "untouched");
    CHECK(view.chosen == 16);
    ++logbook.edition;
    logbook_view(logbook, catalog, student, {}, view);
    CHECK(view.rows[0].lesson != "untouched");
}

TEST_CASE(
    "logbook mirror: a line a row, the chosen one marked, at most fifty and the chosen one beyond them") {
    const Logbook logbook = invented_logbook(60);
    LogbookView view = view_of(logbook, {logbook.rows[57].id, "", 0, 0});
    std::string text = logbook_text(view);
    CHECK(count_of(text, "Fault: ") == 50);
    CHECK(count_of(text, "Chosen: ") == 1);
    CHECK(text.find("Chosen: " + view.rows[2].when) != std::string::npos);
    CHECK(text.find("and 10 older attempts") != std::string::npos);
    text = logbook_text(view_of(logbook, {logbook.rows[0].id, "", 0, 0}));
    CHECK(count_of(text, "Fault: ") == 51);
    CHECK(count_of(text, "Chosen: ") == 1);
}

TEST_CASE(
    "progress view: counts by lesson, hints and evidence of all lessons, and never that anyone is ready") {
    Logbook logbook = invented_logbook(40);
    logbook.rows[39].cut_off = true;  // never came to its end, so it does not count
    const std::int64_t weeks_later = first_unix_s + 30 * 86400;
    const ProgressView all = progress_of_logbook(logbook, {"", "", weeks_later, 0});
    REQUIRE(all.lessons.size() == 3);
    CHECK(all.lessons[0].count == "39");
    CHECK(all.lessons[0].unaided == "31");
    CHECK(all.lessons[0].aided == "8");
    CHECK(all.points.size() == 39);
    REQUIRE(all.hints.size() == 1);
    CHECK(all.hints[0].find("refresher") != std::string::npos);
    CHECK(all.evidence.size() == 7);

    const ProgressView one = progress_of_logbook(logbook, {"", "from_above", weeks_later, 0});
    CHECK(one.lessons[static_cast<std::size_t>(one.lesson)].id == "from_above");
    CHECK(one.points.size() == 13);
    CHECK(one.evidence_words == all.evidence_words);
    for (const ProgressView& view : {all, one}) {
        const std::string text = progress_text(view);
        CHECK(text.find("ready") == std::string::npos);
        CHECK(text.find("Not yet: ") != std::string::npos);
    }
}

// Worked by hand: the first four fail, then all pass; a pass adds ln(0.85 / 0.60) = 0.3483, so the sum comes
// to 2.5 with the eighth pass of the unaided (7 x 0.3483 = 2.438). Every fifth, from the fourth on, is aided:
// unaided passes are the attempts 5 6 7 8 10 11 12 13, counted from 1.
TEST_CASE("progress view: the learning curve signals where it does by hand") {
    const ProgressView view = progress_of_logbook(invented_logbook(20));
    CHECK(view.signal_at == 12);
    CHECK(view.learning == "It signalled at attempt 13; no relapse has shown since.");
    CHECK_NEAR(view.points[11].learning_sum, 7 * 0.34831, 1e-3);  // float, printed to two decimals
    CHECK(view.points[3].learning_sum < 0);
    const ProgressView early = progress_of_logbook(invented_logbook(6));
    CHECK(early.signal_at == -1);
    CHECK(early.learning == "No signal yet: the sum is 0.70 of 2.5.");

    Logbook begun_low = invented_logbook(6);
    begun_low.rows[5].row.gate_reached = false;
    begun_low.rows[5].row.decision = Decision::none;
    const ProgressView without = progress_of_logbook(begun_low);
    CHECK(without.points[4].learning_sum >= 0);
    CHECK(without.points[5].learning_sum < 0);  // draws nothing
    CHECK(without.learning == "No signal yet: the sum is 0.35 of 2.5.");
}

TEST_CASE("progress view: medians are of how far off either way, and a new day begins a session") {
    const ProgressView view = progress_of_logbook(invented_logbook(9));
    CHECK_NEAR(view.points[1].bias_deg, 0.2, 1e-6);          // float
    CHECK_NEAR(view.points[1].median_bias_deg, 0.25, 1e-6);  // of 0.3 and 0.2
    CHECK(view.points[3].median_bias_deg < 0);               // aided
    CHECK(view.points[8].begins_session);
    CHECK_FALSE(view.points[7].begins_session);
}

TEST_CASE("app: L opens the logbook, Escape ends a question first and then closes it") {
    TestHost host;
    App app = make_app(shipped(), host);
    RawInput raw;
    raw.pressed[static_cast<std::size_t>(Key::l)] = true;
    for (const Action& action : read_shortcuts(raw, Screen::choices)) apply(app, action, host);
    CHECK(app.screen == Screen::logbook);
    app.ui.logbook.asks = LogbookUi::Asks::student;
    raw = {};
    raw.pressed[static_cast<std::size_t>(Key::escape)] = true;
    const Actions escape = read_shortcuts(raw, Screen::logbook);
    for (const Action& action : escape) apply(app, action, host);
    CHECK(app.screen == Screen::logbook);
    CHECK(app.ui.logbook.asks == LogbookUi::Asks::nothing);
    for (const Action& action : escape) apply(app, action, host);
    CHECK(app.screen == Screen::welcome);
}

TEST_CASE("app: an attempt is deleted, its neighbour is chosen, and it is brought back") {
    TestHost host;
    App app = app_with(5, host);
    const std::string id = app.logbook.rows[2].id, before = app.logbook.rows[1].id;
    apply(app, ChooseAttempt{id}, host);
    apply(app, DeleteAttempt{id}, host);
    CHECK(make_view(app).logbook.rows.size() == 4);
    CHECK(make_view(app).mirror.screen.find("Deleted, can be brought back: 1") != std::string::npos);
    CHECK(app.logbook_choice.attempt == before);
    apply(app, BringBackAttempt{id}, host);
    const View view = make_view(app);
    CHECK(view.logbook.rows.size() == 5);
    CHECK(view.logbook.rows[static_cast<std::size_t>(view.logbook.chosen)].id == id);
}

TEST_CASE("app: another student is kept, told on the first screen, and has an own list") {
    TestHost host;
    App app = app_with(5, host);
    apply(app, ChooseStudent{"  Heron 2 "}, host);
    CHECK(app.settings.student == "Heron 2");
    CHECK(host.kept.find("\"student\": \"Heron 2\"") != std::string::npos);
    CHECK(make_view(app).logbook.rows.empty());
    apply(app, CloseLogbook{}, host);
    CHECK(make_view(app).mirror.screen.find("Student: Heron 2") != std::string::npos);
}

TEST_CASE("app: the progress sheet hands over a row an attempt of the lesson chosen") {
    TestHost host;
    App app = app_with(12, host);
    apply(app, OpenProgress{}, host);
    apply(app, ChooseProgressLesson{"from_above"}, host);
    apply(app, SaveProgress{}, host);
    CHECK(host.file.starts_with("# Ground study aid."));
    CHECK(std::ranges::count(host.file, '\n') == 2 + 4);  // the caution, the heads, four attempts
    apply(app, CloseProgress{}, host);
    CHECK(app.screen == Screen::logbook);
}
