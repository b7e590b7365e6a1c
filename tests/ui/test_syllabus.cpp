// The lessons in the program: found, read, flown, judged and gone on from.
#include <doctest/doctest.h>

#include <cmath>
#include <string>

#include "base/units.h"
#include "lesson/demonstrate.h"
#include "tests/check.h"
#include "tests/ui/test_host.h"
#include "ui/app.h"
#include "ui/flight_help.h"
#include "ui/keep_attempts.h"
#include "ui/make_view.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

App practised(TestHost& host) {
    App app = make_app(shipped(), host);
    app.settings.up_key_pushes = true;
    return app;
}

void begin(App& app, TestHost& host, const std::string& id) {
    apply(app, OpenLesson{id}, host);
    apply(app, FlyLesson{id}, host);
    REQUIRE(app.screen == Screen::briefing);
    apply(app, StartFlight{}, host);
    REQUIRE(app.screen == Screen::flight);
    if (waits_for_answer(*app.flight)) apply(app, ExchangeControls{}, host);
}

// The good model pilot in the student's seat, to the end of scoring.
void fly_well(App& app) {
    ModelPilot student = pilot_for(app.flight->scenario, *pilot_skill("good"), 1);
    for (int i = 0; i < 120 * 400 && !app.flight->reviewed; ++i) {
        const Attempt& attempt = app.flight->attempt;
        tick_session(*app.flight, fly(student, sight_of(app.flight->scenario, attempt), time_s(attempt)));
    }
    REQUIRE(app.flight->reviewed);
}

void show_sheet(App& app, TestHost& host) {
    keep_attempt(app, host);
    apply(app, OpenSummary{}, host);
}

bool refly_is_same(const App& app) {
    const Replay again = replay(app.flight->recording, app.flight->scenario);
    return again.first_diverged_tick == -1 && state_hash(again.attempt) == state_hash(app.flight->attempt);
}

}  // namespace

TEST_CASE(
    "lessons: all twenty-five stand in three groups, the first of them is next, and nothing is locked") {
    TestHost host;
    App app = practised(host);
    apply(app, OpenLessons{}, host);
    const LessonsView sheet = make_view(app).lessons;
    REQUIRE(sheet.groups.size() == 3);
    std::size_t count = 0;
    for (const LessonsView::Group& group : sheet.groups) {
        for (const LessonsView::Row& row : group.rows) {
            ++count;
            CHECK(row.next == (row.number == "1"));
            apply(app, OpenLesson{row.id}, host);
            const LessonCardView card = make_view(app).lesson_card;
            CHECK(card.title == row.title);
            CHECK_FALSE(card.criterion.empty());
            CHECK(card.mistakes.size() >= 2);
            CHECK_FALSE(card.instructor.empty());
            CHECK_FALSE(card.sources.empty());
        }
    }
    CHECK(count == 25);
    CHECK(sheet.chosen == 0);
}

TEST_CASE("lessons: flown by a model pilot a lesson meets its criterion, and the sheet says so and goes on") {
    TestHost host;
    App app = practised(host);
    app.logbook.standing = Logbook::Standing::open;
    for (int run = 1; run <= 3; ++run) {
        begin(app, host, "last_half_mile");
        fly_well(app);
        show_sheet(app, host);
        const LessonResultView result = make_view(app).summary.lesson;
        CAPTURE(run);
        REQUIRE(result.rows.size() == 2);
        for (const LessonResultView::Row& row : result.rows) {
            CAPTURE(row.asked);
            CAPTURE(row.flown);
            CHECK(row.met);
        }
        CHECK(result.reached == (run == 3));
        CHECK(result.variation.starts_with("Run " + std::to_string(run) + ", seed 1"));
        CHECK(app.logbook.rows.back().row.lesson == "last_half_mile");
        CHECK(app.logbook.rows.back().row.criterion_met);
        CHECK(app.logbook.rows.back().row.unaided);
        apply(app, GoToChoices{}, host);
    }
    apply(app, OpenLessons{}, host);
    CHECK(make_view(app).lessons.going_on == "Next: 7, From one mile, from two.");
}

TEST_CASE(
    "lessons: the lights are not shown below the height that the lesson says, and are again for the replay") {
    TestHost host;
    App app = practised(host);
    begin(app, host, "last_half_mile");
    tick_session(*app.flight, quantize(app.hands.at));
    const bool high = observe(app.flight->scenario, app.flight->attempt).wheel_height_m > m_from_ft(200.0);
    CHECK((make_view(app).flight.scene.lamp_count > 0) == high);
    fly_well(app);
    CHECK(make_view(app).flight.scene.lamp_count == 0);
    CHECK(make_view(app).flight.lights.words == "not shown");
    apply(app, OpenReplay{}, host);
    CHECK(make_view(app).flight.scene.lamp_count > 0);
}

TEST_CASE(
    "lessons: power is handed over in words, the flight waits for the answer, and it flies again the same") {
    TestHost host;
    App app = practised(host);
    apply(app, OpenLesson{"path_by_power"}, host);
    apply(app, FlyLesson{"path_by_power"}, host);
    apply(app, StartFlight{}, host);
    CHECK(waits_for_answer(*app.flight));
    CHECK(make_view(app).flight.caption == "You have power. Answer with C: I have power.");
    apply(app, ExchangeControls{}, host);
    CHECK_FALSE(waits_for_answer(*app.flight));
    CHECK(make_view(app).flight.control == "You have power, I have pitch");
    fly_well(app);
    CHECK(refly_is_same(app));
    CHECK(app.flight->recording.circumstances.aids.unaided());
}

TEST_CASE(
    "lessons: control given up and taken back in flight flies again bit for bit, and the sheet tells it") {
    TestHost host;
    App app = practised(host);
    begin(app, host, "full_final");
    const auto fly_s = [&](double seconds) {
        for (int i = 0; i < static_cast<int>(120 * seconds); ++i) {
            tick_session(*app.flight, quantize(app.hands.at));
            follow_partner(*app.flight, app.hands.at);
        }
    };
    fly_s(2.0);
    apply(app, ExchangeControls{}, host);
    CHECK(make_view(app).flight.caption == "You: You have control. The other pilot: I have control.");
    app.hands.at.stick = 1.0;  // nobody listens to this hand now
    fly_s(5.0);
    CHECK(std::abs(positions_of(app.flight->attempt.controls).stick) < 0.9);
    const double lever = positions_of(app.flight->attempt.controls).throttle;
    apply(app, ExchangeControls{}, host);
    CHECK_NEAR(app.hands.at.throttle, lever, 1e-4);  // a step of the lever is 1/65535
    app.hands.at.stick = 0.0;
    fly_s(2.0);
    CHECK(refly_is_same(app));
    apply(app, GoAround{}, host);
    fly_s(0.1);
    REQUIRE(app.flight->reviewed);
    CHECK_NEAR(app.flight->recording.circumstances.aids.partner_s, 5.0, 0.02);
    CHECK_FALSE(app.flight->recording.circumstances.aids.unaided());
    CHECK(refly_is_same(app));
}

TEST_CASE("lessons: how a run begins is kept back in the briefing and told on the sheet") {
    TestHost host;
    App app = practised(host);
    apply(app, OpenLesson{"go_around_at_the_gate"}, host);
    apply(app, FlyLesson{"go_around_at_the_gate"}, host);
    CHECK(make_view(app).briefing.run ==
          "Run 1, seed 1: one of 8 ways to begin; which one is told afterwards.");
    apply(app, StartFlight{}, host);
    CHECK(make_view(app).flight.setup.starts_with("as you find it"));
}

TEST_CASE("lessons: the larger aircraft ahead is in the picture, and its path only once it was judged") {
    TestHost host;
    App app = practised(host);
    begin(app, host, "behind_a_larger_aircraft");
    const LeaderView leader = make_view(app).flight.scene.leader;
    CHECK(leader.there);
    CHECK(leader.x_m > make_view(app).flight.scene.camera.x_m);
    CHECK_FALSE(leader.path_shown);
    apply(app, GoAround{}, host);
    tick_session(*app.flight, quantize(app.hands.at));
    CHECK(make_view(app).flight.scene.leader.path_shown);
}

TEST_CASE("first page: two keys lead a newcomer to hands on keys on final") {
    TestHost host;
    App app = make_app(shipped(), host);
    REQUIRE(app.screen == Screen::welcome);
    const auto press = [&](Key key) {
        RawInput raw;
        raw.pressed[static_cast<std::size_t>(key)] = true;
        for (const Action& action : read_shortcuts(raw, app.screen)) apply(app, action, host);
    };
    press(Key::f);
    CHECK(app.screen == Screen::stick_sense);
    press(Key::down);
    CHECK(app.screen == Screen::flight);
    CHECK(app.settings.up_key_pushes == false);
    CHECK_FALSE(app.flight->paused);
}

TEST_CASE("first page: lesson 1, the lessons, the logbook and the keys are one key away, and lead back") {
    TestHost host;
    App app = make_app(shipped(), host);
    apply(app, OpenFirstLesson{}, host);
    CHECK(make_view(app).lesson_card.number == "1");
    apply(app, OpenLessons{}, host);
    apply(app, CloseLessons{}, host);
    CHECK(app.screen == Screen::welcome);
    apply(app, OpenScreenAndHelp{}, host);
    CHECK(app.screen == Screen::screen_and_help);
    apply(app, CloseScreenAndHelp{}, host);
    CHECK(app.screen == Screen::welcome);
}
