// What machines do: they sleep, draw too slowly, lose the picture, have their clock set. Whole frames with a
// clock of our own.
#include <doctest/doctest.h>

#include "tests/check.h"
#include "tests/ui/approach_frames.h"
#include "tests/ui/test_host.h"
#include "ui/app.h"
#include "ui/flight_session.h"
#include "ui/make_view.h"
#include "ui/views.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

constexpr double frame_s = 1.0 / 60.0;

void fly(ApproachFrames& approach, double seconds, double each_s = frame_s) {
    for (double flown_s = 0.0; flown_s < seconds; flown_s += each_s) approach.next_frame(each_s);
}

bool shows(const ApproachFrames& approach, std::string_view words) {
    return approach.app.view.mirror.screen.find(words) != std::string::npos;
}

std::int64_t ticks(const ApproachFrames& approach) { return approach.app.flight->attempt.tick; }

}  // namespace

TEST_CASE("robust: a machine that slept finds the flight paused and waiting, with nothing caught up") {
    for (const double slept_s : {5.1, 40.0, 600.0, 30000.0}) {
        CAPTURE(slept_s);
        ApproachFrames approach({1280, 720}, "larkmoor");
        fly(approach, 2.0);
        const std::int64_t before = ticks(approach);
        approach.next_frame(slept_s);
        CHECK(ticks(approach) == before);
        CHECK(approach.app.flight->paused);
        CHECK(shows(approach, "This machine stood still for "));
        CHECK_FALSE(approach.host.heard.audible);
        fly(approach, 1.0);
        CHECK(ticks(approach) == before);
        CHECK(shows(approach, "The flight waited."));
        apply(approach.app, TogglePause{}, approach.host);
        fly(approach, 1.0);
        CHECK_NEAR(static_cast<double>(ticks(approach) - before), 120.0, 2.0);  // a frame's worth
        CHECK_FALSE(shows(approach, "stood still"));
        CHECK_FALSE(shows(approach, "too slow"));
        // A pause of the user's own says nothing of a sleep that is over.
        apply(approach.app, TogglePause{}, approach.host);
        approach.next_frame(frame_s);
        CHECK_FALSE(shows(approach, "stood still"));
    }
}

TEST_CASE("robust: the words of a sleep fit its length, and a long frame alone is none") {
    struct Row {
        double s;
        const char* words;
    };
    for (const Row& row : {Row{40.0, "for 40 s."}, Row{420.0, "for 7 min."}, Row{10800.0, "for 3 h."}}) {
        ApproachFrames approach({640, 360}, "larkmoor");
        fly(approach, 0.5);
        approach.next_frame(row.s);
        CHECK(shows(approach, row.words));
    }
    ApproachFrames approach({640, 360}, "larkmoor");
    fly(approach, 0.5);
    approach.next_frame(4.5);
    CHECK_FALSE(approach.app.flight->paused);
}

TEST_CASE("robust: a clock that is set back moves nothing") {
    ApproachFrames approach({640, 360}, "larkmoor");
    fly(approach, 1.0);
    const std::int64_t before = ticks(approach);
    approach.next_frame(-3600.0);
    CHECK(ticks(approach) == before);
    CHECK_FALSE(approach.app.flight->paused);
    fly(approach, 1.0);
    CHECK_NEAR(static_cast<double>(ticks(approach) - before), 120.0, 2.0);  // a frame's worth
}

TEST_CASE("robust: on a very slow machine time slows, says by how much, and the sheet tells what was lost") {
    ApproachFrames approach({640, 360}, "larkmoor");
    for (int i = 0; i < 20; ++i) {
        const std::int64_t before = ticks(approach);
        approach.next_frame(0.5);
        CHECK(ticks(approach) - before <= 30);
    }
    CHECK(shows(approach, "This machine is too slow: time runs at 0.5"));
    CHECK(approach.app.view.flight.caption == "This machine is too slow: time runs at 0.5");
    CHECK_NEAR(approach.app.flight->lost_s, 5.0, 0.5);  // half of ten seconds, but for one frame
    fly(approach, 9.0);
    CHECK_FALSE(shows(approach, "too slow"));
    apply(approach.app, GoAround{}, approach.host);
    fly(approach, 0.5);
    CHECK_NEAR(approach.app.flight->recording.circumstances.aids.lost_s, 5.0, 0.5);
    CHECK(
        aids_words(*approach.app.flight).find("The machine was too slow: 5 s of the clock were not flown.") !=
        std::string::npos);
}

TEST_CASE("robust: a lost picture pauses the flight and says that nothing of it is lost") {
    ApproachFrames approach({1280, 720}, "larkmoor");
    fly(approach, 1.0);
    const std::int64_t before = ticks(approach);
    approach.host.events = {HostEvent::picture_lost};
    fly(approach, 2.0);
    CHECK(ticks(approach) == before);
    CHECK(shows(approach, "Paused."));
    CHECK(shows(approach, "The picture was lost. Nothing of the flight is."));
    CHECK_FALSE(approach.host.heard.audible);
    fly(approach, 1.0);
    CHECK(ticks(approach) == before);  // it goes on when the student says so, not when the picture is back
    apply(approach.app, TogglePause{}, approach.host);
    fly(approach, 1.0);
    CHECK_NEAR(static_cast<double>(ticks(approach) - before), 120.0, 2.0);  // a frame's worth
}

TEST_CASE("robust: a machine that slept over a card or a replay finds it where it was") {
    TestHost host;
    App app = make_app(shipped(), host);
    apply(app, StartFlight{}, host);
    for (int i = 0; i < 1200; ++i) tick_session(*app.flight, quantize(app.hands.at));
    apply(app, GoAround{}, host);
    for (int i = 0; i < 10; ++i) tick_session(*app.flight, quantize(app.hands.at));
    ApproachFrames approach({1280, 720}, "larkmoor");
    approach.app.flight = *app.flight;
    approach.app.debrief = {};
    apply(approach.app, OpenReplay{}, approach.host);
    REQUIRE(approach.app.screen == Screen::replay);
    REQUIRE(approach.app.replay);
    approach.app.replay->playing = true;
    fly(approach, 1.0);
    const double before = approach.app.replay->tick;
    approach.next_frame(600.0);
    CHECK_FALSE(approach.app.replay->playing);
    CHECK(approach.app.replay->tick == before);
}
