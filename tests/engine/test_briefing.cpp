// The briefing's figures.
#include "lesson/briefing.h"

#include "base/units.h"
#include "lesson/approach_choice.h"
#include "tests/check.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

TEST_CASE("briefing: heights on the 3-degree path are those of geometry") {
    // Distance times tan 3 deg, 6,076.115 ft to the nautical mile; within the rounding to a foot.
    const Briefing briefing = make_briefing(shipped_scenario("final_calm"));
    const double expected_ft[] = {955.3, 636.9, 318.4, 159.2};
    for (std::size_t i = 0; i < 4; ++i)
        CHECK_NEAR(ft_from_m(briefing.heights[i].height_m), expected_ft[i], 0.1);
}

TEST_CASE("briefing: a headwind takes ground speed and sink away, and wants more power for the same path") {
    const Briefing calm = make_briefing(shipped_scenario("final_calm"));
    const Briefing windy = make_briefing(shipped_scenario("final_headwind"));
    REQUIRE(calm.flyable);
    REQUIRE(windy.flyable);
    CHECK(windy.target_cas_mps == calm.target_cas_mps);
    // The wind is along the ground and the flight at under 3 degrees: within 0.2 kt of the plain difference.
    CHECK_NEAR(kt_from_mps(calm.ground_speed_mps - windy.ground_speed_mps), 15.0, 0.2);
    CHECK(windy.sink_mps < calm.sink_mps);
    CHECK(windy.power > calm.power + 0.03);
}

TEST_CASE("briefing: the tourer wants about a third of full power on the path, nose a little down") {
    // The aircraft's own specification: about a third; two hundredths either side is a needle's width.
    const Briefing briefing = make_briefing(shipped_scenario("final_calm"));
    CHECK_NEAR(briefing.power, 0.33, 0.02);
    CHECK_NEAR(deg_from_rad(briefing.pitch_rad), -3.0, 0.3);
}

TEST_CASE(
    "briefing: a flight trimmed to its figures holds path and speed for a mile with nobody touching "
    "anything") {
    const Lesson mile = lesson_of({1, StartSide::on, 0.0}, *find_lesson(shipped(), "final_calm"));
    const Scenario scenario = scenario_of(shipped(), mile);
    const auto hands_off = [&](const Attempt&) { return quantize(scenario.start_trim.controls); };
    const Flight flight = fly_with(scenario, 40000, hands_off);
    CHECK(flight.attempt.end == End::reached_floor);
    // Air grows denser on the way down, so a constant lever drifts high by some feet a mile: in tolerance,
    // not nothing.
    CHECK_NEAR(flight.summary.all_share, 1.0, 1e-9);
    CHECK(flight.track.points.back().path_offset_m > 0.0);
}

TEST_CASE("briefing: the lights shown at the start are those of the start") {
    CHECK(make_briefing(shipped_scenario("final_calm")).white_at_start == 2);
    CHECK(make_briefing(shipped_scenario("from_above")).white_at_start == 4);
    CHECK(make_briefing(shipped_scenario("from_below")).white_at_start == 0);
    CHECK(make_briefing(shipped_scenario("from_below")).white_on_path == 2);
}

TEST_CASE("briefing: what cannot be flown has no figures but a reason, from the start or from the path") {
    Lesson lesson = shipped_scenario("final_calm").lesson;
    lesson.start.cas_mps = mps_from_kt(36.0);
    const Briefing slow_start = make_briefing(scenario_of(shipped(), lesson));
    CHECK_FALSE(slow_start.flyable);
    CHECK_FALSE(slow_start.reason.empty());
    lesson = shipped_scenario("final_calm").lesson;
    lesson.target_cas_mps = mps_from_kt(36.0);
    const Briefing slow_path = make_briefing(scenario_of(shipped(), lesson));
    CHECK_FALSE(slow_path.flyable);
    CHECK_FALSE(slow_path.reason.empty());
}
