// Time, recordings and replays.
#include "record/recording.h"

#include "base/units.h"
#include "record/tick_clock.h"
#include "tests/check.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

TEST_CASE("clock: wall time becomes whole ticks, 120 to the second, however the frames fall") {
    for (const double frame_s : {1.0 / 144.0, 1.0 / 60.0, 1.0 / 23.0}) {
        TickClock clock;
        clock.due(10.0, true);
        int ticks = 0;
        const int frames = static_cast<int>(5.0 / frame_s);
        for (int i = 1; i <= frames; ++i) ticks += clock.due(10.0 + i * frame_s, true);
        CHECK_NEAR(ticks, frames * frame_s * 120.0, 1.0);
        CHECK(clock.fraction() >= 0.0);
        CHECK(clock.fraction() < 1.0);
    }
}

TEST_CASE("clock: a stall owes a quarter of a second at most, a pause and a clock set back owe nothing") {
    TickClock clock;
    clock.due(0.0, true);
    CHECK(clock.due(100.0, true) == 30);
    CHECK(clock.due(90.0, true) == 0);
    CHECK(clock.due(95.0, false) == 0);
    CHECK(clock.due(95.105, true) == 12);
}

TEST_CASE("clock: however slow the frames, never more than 30 ticks are due, and the share of time says so") {
    struct Row {
        double frame_s, share;
    };
    // What is left of a frame's time is the quarter of a second that it may owe.
    for (const Row& row : {Row{1.0 / 60.0, 1.0}, Row{0.2, 1.0}, Row{0.25, 1.0}, Row{0.4, 0.625},
                           Row{0.5, 0.5}, Row{1.0, 0.25}, Row{4.0, 0.0625}}) {
        CAPTURE(row.frame_s);
        TickClock clock;
        double wall_s = 10.0, lost_s = 0.0;
        int ticks = 0;
        clock.due(wall_s, true);
        for (const double end_s = wall_s + 40.0; wall_s < end_s; wall_s += row.frame_s) {
            const int due = clock.due(wall_s + row.frame_s, true);
            CHECK(due <= 30);
            ticks += due;
            lost_s += clock.lost_s();
        }
        CHECK_NEAR(clock.share(), row.share, 1e-9);
        CHECK(clock.slow() == (row.share < slow_below));
        // Nothing is lost without being counted; a tick may still be owed.
        CHECK_NEAR(ticks / 120.0 + lost_s, wall_s - 10.0, 1.0 / 120.0);
    }
}

TEST_CASE("clock: one hiccup is not a slow machine, and neither is a sleep or a pause") {
    TickClock clock;
    double wall_s = 0.0;
    const auto run = [&](double seconds, bool running = true) {
        for (const double end_s = wall_s + seconds; wall_s < end_s;) clock.due(wall_s += 1.0 / 60.0, running);
    };
    run(10.0);
    clock.due(wall_s += 0.5, true);
    CHECK(clock.lost_s() > 0.2);
    run(10.0);
    CHECK_FALSE(clock.slow());
    clock.due(wall_s += 300.0, true);
    run(4.5);
    CHECK_FALSE(clock.slow());
    for (int i = 0; i < 20; ++i) clock.due(wall_s += 0.5, true);
    CHECK(clock.slow());
    run(0.1, false);
    CHECK_FALSE(clock.slow());  // what is measured begins anew
    for (int i = 0; i < 20; ++i) clock.due(wall_s += 0.5, true);
    run(9.0);
    CHECK_FALSE(clock.slow());  // as soon as it keeps up
}

TEST_CASE("recording: flown again it is the same flight, bit for bit") {
    for (const char* lesson : {"final_calm", "wind_gradient", "from_above"}) {
        const Scenario scenario = shipped_scenario(lesson);
        const Flight flight = fly_good(scenario, 4);
        const Replay again = replay(flight.recording, scenario);
        CHECK(again.first_diverged_tick == -1);
        CHECK(again.attempt.tick == flight.attempt.tick);
        CHECK(state_hash(again.attempt) == state_hash(flight.attempt));
    }
}

TEST_CASE("recording: a changed control is named by the first second that differs") {
    const Scenario scenario = shipped_scenario("final_calm");
    Flight flight = fly_good(scenario, 4);
    auto& change = flight.recording.changes[flight.recording.changes.size() / 2];
    change.controls.stick = static_cast<std::int16_t>(change.controls.stick + 1);
    const Replay again = replay(flight.recording, scenario);
    CHECK(again.first_diverged_tick >= change.tick);
    CHECK(again.first_diverged_tick <= change.tick + 2 * hash_interval_ticks);
}

TEST_CASE("recording: the same controls on another runway are told from the first second on") {
    const Scenario scenario = shipped_scenario("final_calm");
    const Flight flight = fly_good(scenario, 4);
    Scenario other = scenario;
    other.surroundings.runway.elevation_m += 1.0;
    CHECK(replay(flight.recording, other).first_diverged_tick == hash_interval_ticks);
}
