// The program without a window: wishes in, screens and what the host is asked for out.
#include <doctest/doctest.h>

#include "tests/check.h"
#include "tests/ui/test_host.h"
#include "ui/app.h"
#include "ui/make_view.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

// Ticks the flight in progress with its hands as they are, until scoring ends.
void fly_hands_off(App& app) {
    for (int i = 0; i < 120 * 400 && !app.flight->reviewed; ++i)
        tick_session(*app.flight, quantize(app.hands.at));
}

}  // namespace

TEST_CASE("app: the stick question is asked once, before the first briefing, and kept") {
    TestHost host;
    App app = make_app(shipped(), host);
    apply(app, OpenBriefing{}, host);
    CHECK(app.screen == Screen::stick_sense);
    apply(app, AnswerStickSense{false}, host);
    CHECK(app.screen == Screen::briefing);
    CHECK(host.kept.find("up_key_pulls") != std::string::npos);

    App again = make_app(shipped(), host);
    apply(again, OpenBriefing{}, host);
    CHECK(again.screen == Screen::briefing);
    CHECK(again.settings.up_key_pushes == false);
}

TEST_CASE("app: damaged settings are told of, and the program starts with its defaults") {
    TestHost host;
    host.kept = "{\"kind\": 3";
    App app = make_app(shipped(), host);
    CHECK(app.screen == Screen::welcome);
    CHECK(app.notice.find("defaults are used") != std::string::npos);
    CHECK(make_view(app).mirror.screen.find("defaults are used") != std::string::npos);
}

TEST_CASE("app: every choice of approach on the first screen can be flown") {
    TestHost host;
    App app = make_app(shipped(), host);
    for (const int distance : choice_distances_nm) {
        for (int position = 0; position < 3; ++position) {
            for (const double wind : {0.0, 5.0, 10.0, 15.0, 20.0}) {
                apply(app, ChooseDistance{distance}, host);
                apply(app, ChoosePosition{position}, host);
                apply(app, ChooseHeadwind{wind}, host);
                CHECK(make_view(app).choice.problem == "");
            }
        }
    }
}

TEST_CASE("app: a flight left alone on the path ends at 50 ft with its summary, and can be flown on") {
    TestHost host;
    App app = make_app(shipped(), host);
    app.settings.up_key_pushes = true;
    apply(app, ChooseDistance{1}, host);
    apply(app, OpenBriefing{}, host);
    apply(app, StartFlight{}, host);
    REQUIRE(app.flight);
    CHECK(app.screen == Screen::flight);
    fly_hands_off(app);
    REQUIRE(app.flight->reviewed);
    CHECK(app.flight->reviewed->review.summary.end == End::reached_floor);
    apply(app, OpenSummary{}, host);
    const SummaryView summary = make_view(app).summary;
    CHECK(summary.gates.size() == 3);  // 300, 200 and 50 ft: the flight began below 500
    CHECK(summary.can_fly_on);
    CHECK_FALSE(summary.can_mirror);
    apply(app, SaveTrack{}, host);
    CHECK(host.file.starts_with("# Ground study aid."));
    apply(app, FlyOn{}, host);
    CHECK(app.screen == Screen::flight);
    CHECK(make_view(app).flight.status == "Unscored: land or go around");
}

TEST_CASE("app: the mirrored start is as far from the path on the other side") {
    TestHost host;
    App app = make_app(shipped(), host);
    apply(app, ChoosePosition{static_cast<int>(StartSide::above)}, host);
    apply(app, StartFlight{}, host);
    const double above = observe(app.flight->scenario, app.flight->attempt).path_error_rad;
    apply(app, RestartMirrored{}, host);
    const double below = observe(app.flight->scenario, app.flight->attempt).path_error_rad;
    CHECK(above > 0.0);
    CHECK_NEAR(below, -above, 1e-12);
    CHECK(make_view(app).flight.setup.find("below the path") != std::string::npos);
    apply(app, RestartSame{}, host);
    CHECK_NEAR(observe(app.flight->scenario, app.flight->attempt).path_error_rad, below, 1e-15);
}

TEST_CASE("app: a hidden page pauses the flight, and go around is full power and the end of scoring") {
    TestHost host;
    App app = make_app(shipped(), host);
    apply(app, StartFlight{}, host);
    apply(app, TogglePause{}, host);
    CHECK(app.flight->paused);
    apply(app, TogglePause{}, host);
    CHECK_FALSE(app.flight->paused);
    apply(app, GoAround{}, host);
    fly_hands_off(app);
    CHECK(app.flight->attempt.tick == 1);
    CHECK(app.flight->reviewed->review.summary.end == End::went_around);
    CHECK(app.hands.at.throttle == 1.0);
}

TEST_CASE("app: what was flown live is flown again from its recording, to the same bits") {
    TestHost host;
    App app = make_app(shipped(), host);
    apply(app, ChooseDistance{1}, host);
    apply(app, StartFlight{}, host);
    for (int i = 0; i < 2000; ++i) {
        app.hands.at.stick = 0.2 * ((i / 100) % 3 - 1);
        app.hands.at.throttle = 0.3 + 0.1 * ((i / 300) % 2);
        tick_session(*app.flight, quantize(app.hands.at));
    }
    const Replay again = replay(app.flight->recording, app.flight->scenario);
    CHECK(again.first_diverged_tick == -1);
    CHECK(state_hash(again.attempt) == state_hash(app.flight->attempt));
}
