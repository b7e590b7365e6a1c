// Keeping attempts, without a window: what is in the store after what was done, and what comes of a full
// store, a closed tab, damage, another window and files of others.
#include "logbook/attempt_id.h"
#include "logbook/student_file.h"
#include "tests/check.h"
#include "tests/ui/test_host.h"
#include "ui/app.h"
#include "ui/import_attempts.h"
#include "ui/keep_attempts.h"
#include "ui/logbook_desk.h"
#include "ui/logbook_events.h"
#include "ui/make_view.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

// Frames at 60 a second, hands as they are.
void fly(App& app, TestHost& host, double seconds) {
    RawInput raw;
    raw.wall_s = app.hands.last_wall_s;
    for (int i = 0; i < static_cast<int>(seconds * 60.0); ++i) {
        raw.wall_s += 1.0 / 60.0;
        if (app.screen != Screen::flight) return;
        take_logbook_events(app, host);
        for (int ticks = 0; ticks < 2; ++ticks) {
            if (tick_session(*app.flight, quantize(app.hands.at)).scoring_ended) {
                app.screen = Screen::summary;
                keep_attempt(app, host);
                return;
            }
        }
        app.hands.last_wall_s = raw.wall_s;
        keep_up(app, host);
    }
}

App opened(TestHost& host) {
    App app = make_app(shipped(), host);
    app.settings.up_key_pushes = true;
    take_logbook_events(app, host);
    apply(app, ChooseDistance{1}, host);
    return app;
}

// An approach from 1 NM flown to its end.
void fly_one(App& app, TestHost& host) {
    apply(app, StartFlight{}, host);
    fly(app, host, 400);
    REQUIRE(app.screen == Screen::summary);
    take_logbook_events(app, host);
}

}  // namespace

TEST_CASE("keeping: an approach flown to its end is in the list, with its student, and its journal is gone") {
    TestHost host;
    App app = opened(host);
    choose_student(app, "Kestrel 7", host);
    fly_one(app, host);
    REQUIRE(app.logbook.rows.size() == 1);
    const IndexRow& row = app.logbook.rows.front();
    CHECK(row.student == "Kestrel 7");
    CHECK_FALSE(row.cut_off);
    CHECK(host.store.attempts.size() == 1);
    CHECK(host.store.journals.empty());
    const Result<KeptAttempt> kept = read_kept_attempt(host.store.attempts.begin()->second, "x");
    REQUIRE(kept.ok());
    CHECK(kept.value->recording.circumstances.student == "Kestrel 7");
    CHECK(kept.value->end == End::reached_floor);
    CHECK(row.row.path_rad.bias == app.flight->reviewed->review.summary.path_rad.bias);

    // The next sheet knows of it.
    apply(app, RestartSame{}, host);
    CHECK(app.debrief.earlier_runs == 1);

    App again = opened(host);
    REQUIRE(again.logbook.rows.size() == 1);
    CHECK(index_row_text(again.logbook.rows.front()) == index_row_text(row));
    CHECK(again.settings.student == "Kestrel 7");
}

TEST_CASE(
    "keeping: a name written in the machine's own window is taken, tidied; none written changes nothing") {
    TestHost host;
    host.fingers = true;
    App app = opened(host);
    apply(app, OpenLogbook{}, host);
    CHECK(make_view(app).logbook.writes_by_finger);
    host.written = "  Kestrel   7 ";
    apply(app, WriteStudent{}, host);
    CHECK(app.settings.student == "Kestrel 7");
    host.written.reset();
    apply(app, WriteStudent{}, host);
    CHECK(app.settings.student == "Kestrel 7");
}

TEST_CASE("keeping: a tab closed in flight loses at most the last second") {
    TestHost host;
    App app = opened(host);
    apply(app, StartFlight{}, host);
    fly(app, host, 23.7);
    const std::int64_t flown = app.flight->recording.ticks;
    REQUIRE(host.store.journals.size() == 1);

    App again = opened(host);  // the first was never told
    REQUIRE(again.logbook.rows.size() == 1);
    CHECK(again.logbook.rows.front().cut_off);
    CHECK(again.logbook.news == "A flight that was cut off is in the logbook: 23 s of it.");
    CHECK(host.store.journals.empty());
    const Result<KeptAttempt> kept = read_kept_attempt(host.store.attempts.begin()->second, "x");
    REQUIRE(kept.ok());
    CHECK(kept.value->recording.ticks > flown - 121);
    CHECK(trend_rows(again.logbook, "").empty());  // it did not come to its end
}

TEST_CASE("keeping: a flight left before its end is kept as cut off, one of a few seconds is none") {
    TestHost host;
    App app = opened(host);
    apply(app, StartFlight{}, host);
    fly(app, host, 3);
    apply(app, GoToChoices{}, host);
    CHECK(app.logbook.rows.empty());
    CHECK(host.store.journals.empty());
    apply(app, StartFlight{}, host);
    fly(app, host, 8);
    apply(app, GoToChoices{}, host);
    REQUIRE(app.logbook.rows.size() == 1);
    CHECK(app.logbook.rows.front().cut_off);
    CHECK(host.store.journals.empty());
}

TEST_CASE("keeping: flown on after the end, it is kept with the rest when it is left, and only once") {
    TestHost host;
    App app = opened(host);
    fly_one(app, host);
    const std::int64_t scored = app.flight->recording.ticks;
    apply(app, FlyOn{}, host);
    fly(app, host, 2.5);
    CHECK(host.store.journals.size() == 1);
    apply(app, GoToChoices{}, host);
    CHECK(host.store.journals.empty());
    REQUIRE(app.logbook.rows.size() == 1);
    const Result<KeptAttempt> kept = read_kept_attempt(host.store.attempts.begin()->second, "x");
    REQUIRE(kept.ok());
    CHECK(kept.value->recording.ticks > scored);
    CHECK_FALSE(kept.value->cut_off);
}

TEST_CASE(
    "keeping: flown on after the end, it is kept with the rest when an attempt of the logbook takes its "
    "place") {
    TestHost host;
    App app = opened(host);
    fly_one(app, host);
    const std::int64_t scored = app.flight->recording.ticks;
    const std::string id = app.flight->id;
    apply(app, FlyOn{}, host);
    fly(app, host, 2.5);
    CHECK(host.store.journals.size() == 1);
    apply(app, OpenSummary{}, host);
    apply(app, OpenAttempt{id}, host);
    CHECK(host.store.journals.empty());
    take_logbook_events(app, host);
    REQUIRE(app.flight->from_logbook);
    CHECK(app.flight->recording.ticks > scored);
}

TEST_CASE("keeping: a full store is told of, and what was kept before is as it was") {
    TestHost host;
    App app = opened(host);
    fly_one(app, host);
    const std::string before = host.store.attempts.begin()->second;
    host.store.full = true;
    fly_one(app, host);
    CHECK(app.logbook.trouble.find("no more room") != std::string::npos);
    CHECK(host.store.attempts.size() == 1);
    CHECK(host.store.attempts.begin()->second == before);

    // It stands in the list as what it is, opens, and is in the student's file.
    REQUIRE(app.logbook.rows.size() == 2);
    const std::string id = app.logbook.rows.back().id;
    CHECK(app.logbook.unkept.contains(id));
    open_attempt(app, id, host);
    CHECK(app.flight->from_logbook);
    CHECK(app.flight->id == id);
    export_student(app, host);
    CHECK(host.store.exported.find(before) != std::string::npos);
    CHECK(host.store.exported.find(id) != std::string::npos);

    // Deleted in vain to make room; then with success.
    erase_attempt(app, app.logbook.rows.front().id, host);
    take_logbook_events(app, host);
    CHECK(app.logbook.unkept.contains(id));
    host.store.full = false;
    keep_unkept(app, host);
    take_logbook_events(app, host);
    CHECK(app.logbook.unkept.empty());
    CHECK(app.logbook.on_the_way.empty());
    CHECK(host.store.attempts.contains(id));
}

TEST_CASE("keeping: where nothing can be kept the flight goes on, and it is said") {
    TestHost host;
    host.store.refusal = "This browser does not let the page keep a logbook.";
    App app = opened(host);
    CHECK(app.logbook.standing == Logbook::Standing::refused);
    apply(app, StartFlight{}, host);
    fly(app, host, 400);
    CHECK(app.screen == Screen::summary);
    CHECK(host.store.attempts.empty());
    CHECK(host.store.journals.empty());
    CHECK(app.logbook.rows.size() == 1);
    CHECK(app.logbook.unkept.size() == 1);
    export_student(app, host);
    CHECK(host.store.exported.find(app.logbook.rows.front().id) != std::string::npos);
}

TEST_CASE("keeping: a damaged attempt is refused by its name, and the others open") {
    TestHost host;
    App app = opened(host);
    fly_one(app, host);
    fly_one(app, host);
    const std::string damaged = app.logbook.rows[0].id, whole = app.logbook.rows[1].id;
    std::string& text = host.store.attempts[damaged];
    text[text.size() / 2] = text[text.size() / 2] == '4' ? '5' : '4';
    apply(app, GoToChoices{}, host);
    open_attempt(app, damaged, host);
    take_logbook_events(app, host);
    CHECK(app.screen == Screen::choices);
    CHECK(app.logbook.trouble.find(damaged) != std::string::npos);
    CHECK(app.logbook.trouble.find("damaged") != std::string::npos);
    open_attempt(app, whole, host);
    take_logbook_events(app, host);
    CHECK(app.screen == Screen::summary);
    CHECK(app.flight->from_logbook);
    CHECK(app.flight->id == whole);
    // Looked at, it is not kept again.
    const std::string kept = host.store.attempts[whole];
    apply(app, GoToChoices{}, host);
    CHECK(host.store.attempts[whole] == kept);
}

TEST_CASE("keeping: rows of an older version are made again from their attempts, which stay as they are") {
    TestHost host;
    App app = opened(host);
    fly_one(app, host);
    fly_one(app, host);
    const auto rows = host.store.rows;
    const auto attempts = host.store.attempts;
    for (auto& [id, row] : host.store.rows) row = "0\tof another version";
    App again = opened(host);
    for (int i = 0; i < 8; ++i) take_logbook_events(again, host);
    CHECK(again.logbook.rows.size() == 2);
    CHECK(host.store.rows == rows);
    CHECK(host.store.attempts == attempts);
}

TEST_CASE("keeping: deleted is out of the lists and comes back; deleted for good is gone") {
    TestHost host;
    App app = opened(host);
    fly_one(app, host);
    const std::string id = app.logbook.rows.front().id;
    delete_attempt(app, id, host);
    CHECK(rows_of(app.logbook, "").empty());
    CHECK(deleted_rows_of(app.logbook, "").size() == 1);
    CHECK(trend_rows(app.logbook, "").empty());
    App again = opened(host);
    CHECK(deleted_rows_of(again.logbook, "").size() == 1);
    bring_back_attempt(again, id, host);
    CHECK(rows_of(again.logbook, "").size() == 1);
    CHECK(host.store.attempts.size() == 1);
    erase_attempt(again, id, host);
    CHECK(again.logbook.rows.empty());
    CHECK(host.store.attempts.empty());
}

TEST_CASE("keeping: another window's attempt appears, and goes with it") {
    TestHost host;
    App app = opened(host);
    fly_one(app, host);
    IndexRow row = app.logbook.rows.front();
    row.id = attempt_id(1764000999000, 9);
    host.store.events.push_back({StoreEvent::Kind::changed, row.id, "", {index_row_text(row)}});
    take_logbook_events(app, host);
    CHECK(app.logbook.rows.size() == 2);
    host.store.events.push_back({StoreEvent::Kind::changed, row.id, "", {}});
    take_logbook_events(app, host);
    CHECK(app.logbook.rows.size() == 1);
}

TEST_CASE(
    "keeping: a student's file goes out, and into an empty logbook, whole; taken in twice it adds nothing") {
    TestHost host;
    App app = opened(host);
    choose_student(app, "Kestrel", host);
    fly_one(app, host);
    fly_one(app, host);
    export_student(app, host);
    std::vector<std::string> lines;
    for (std::size_t at = 0, end = 0; (end = host.store.exported.find('\n', at)) != std::string::npos;
         at = end + 1)
        lines.push_back(host.store.exported.substr(at, end - at));
    REQUIRE(lines.size() == 4);  // whose it is, the rows of the list, two attempts

    TestHost other;
    App there = opened(other);
    other.store.import_lines = lines;
    for (const int added : {2, 0}) {
        import_file(there, other);
        for (int i = 0; i < 12; ++i) take_logbook_events(there, other);
        CHECK(there.logbook.import->added == added);
        CHECK_FALSE(there.logbook.import->running);
    }
    CHECK(there.logbook.news == "chosen.jsonl: 0 attempts taken in, 2 already here.");
    CHECK(rows_of(there.logbook, "Kestrel").size() == 2);
    CHECK(other.store.attempts == host.store.attempts);
    CHECK(other.store.rows == host.store.rows);
}

TEST_CASE(
    "keeping: of a damaged file only what is damaged is lost; another's file is refused at its first line") {
    TestHost host;
    App app = opened(host);
    fly_one(app, host);
    const std::string good = host.store.attempts.begin()->second;
    TestHost other;
    App there = opened(other);
    other.store.import_lines = {"{\"slopewise_student\":1,\"student\":\"K\"}",
                                good.substr(0, good.size() - 9), "", good};
    import_file(there, other);
    for (int i = 0; i < 12; ++i) take_logbook_events(there, other);
    CHECK(there.logbook.news == "chosen.jsonl: 1 attempt taken in, 1 problem.");
    CHECK(to_text(there.logbook.import->problems.front()) ==
          "chosen.jsonl:2: is damaged: its sum does not agree");

    for (const char* first : {"PK\x03\x04", "{\"slopewise_student\":2,\"student\":\"K\"}", "{", ""}) {
        other.store.import_lines = {first, good};
        import_file(there, other);
        for (int i = 0; i < 12; ++i) take_logbook_events(there, other);
        CHECK_FALSE(there.logbook.import->running);
        if (*first != '\0') CHECK(there.logbook.import->problems.size() == 1);
    }
}
