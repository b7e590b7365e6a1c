// The instructor's station: one thing changed and everything else kept.
#include <cmath>

#include "base/units.h"
#include "lesson/approach_choice.h"
#include "review/track.h"
#include "station/approach_now.h"
#include "station/headwind_table.h"
#include "station/station_failures.h"
#include "station/station_row.h"
#include "tests/check.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

StationRow row_of(std::size_t index) { return static_cast<StationRow>(index); }

// The shipped approach flown on by the good pilot, to be interrupted.
struct Flown {
    Scenario scenario = shipped_scenario("final_calm");
    Attempt attempt;

    explicit Flown(std::int64_t ticks) : Flown(shipped_scenario("final_calm"), ticks) {}
    Flown(Scenario given, std::int64_t ticks) : scenario(std::move(given)) {
        attempt = begin_attempt(scenario);
        ModelPilot pilot = pilot_for(scenario, *pilot_skill("good"), 3);
        while (attempt.tick < ticks)
            tick(scenario, attempt, fly(pilot, sight_of(scenario, attempt), time_s(attempt)));
    }

    Lesson now() const { return approach_now(scenario, attempt, scenario.lesson.start); }
    Lesson with(StationRow row, int choice) const {
        return with_choice(row, choice, scenario, attempt, scenario.lesson.start);
    }
};

Scenario scenario_in(const Scenario& there, const Lesson& lesson) {
    return make_scenario(lesson, there.aircraft, there.surroundings.runway);
}

Lesson with_failure(Lesson lesson, const Failure& failure) {
    lesson.failures[0] = failure;
    lesson.failure_count = 1;
    return lesson;
}

constexpr std::int64_t half_a_minute = 30 * 120;

}  // namespace

TEST_CASE(
    "station: each choice of each row is the one that then stands, and every other row stays as it was") {
    const Flown flown(half_a_minute);
    const Scenario before = scenario_in(flown.scenario, flown.now());
    const Attempt at_first = begin_attempt(before);
    int compared = 0;
    for (std::size_t i = 0; i < station_row_count; ++i) {
        for (int choice = 0; choice < choice_count(row_of(i), flown.scenario); ++choice) {
            const Scenario after = scenario_in(flown.scenario, flown.with(row_of(i), choice));
            const Attempt begun = begin_attempt(after);
            CAPTURE(i);
            CAPTURE(choice);
            CHECK(choice_now(row_of(i), after, begun) == choice);
            for (std::size_t other = 0; other < station_row_count; ++other) {
                if (other == i) continue;
                CAPTURE(other);
                CHECK(choice_now(row_of(other), after, begun) == choice_now(row_of(other), before, at_first));
                ++compared;
            }
        }
    }
    CHECK(compared == 15 * (4 + 3 + 3 + 3 + 6 + 3 + 4 + 2 + 5 + 3 + 6 + 5 + 2 + 3 + 2 + 3));
}

TEST_CASE("station: the approach as it stands keeps distance, angle, airspeed and flap of the moment") {
    const Flown flown(half_a_minute);
    const TrackPoint was = observe(flown.scenario, flown.attempt);
    const Scenario after = scenario_in(flown.scenario, flown.now());
    REQUIRE(after.start_trim.flyable);
    const TrackPoint is = observe(after, begin_attempt(after));
    // Placed by the same equations the other way round: what is left is rounding.
    CHECK_NEAR(is.distance_m, was.distance_m, 1e-6);
    CHECK_NEAR(is.path_error_rad, was.path_error_rad, 1e-9);
    CHECK_NEAR(is.cas_mps, was.cas_mps, 0.02);  // the air at the new pitch's reference point, a hair lower
    CHECK(is.flap_setting == was.flap_setting);
    CHECK_NEAR(is.sink_mps, is.ground_speed_mps * std::tan(rad_from_deg(3.0)), 1e-9);  // along the path
}

TEST_CASE(
    "station: high, on and low are 0.7 degrees off where it is, and fast and slow ten knots off target") {
    const Flown flown(half_a_minute);
    const double there_m = observe(flown.scenario, flown.attempt).distance_m;
    for (int choice = 0; choice < 3; ++choice) {
        const Scenario placed = scenario_in(flown.scenario, flown.with(StationRow::path, choice));
        const TrackPoint point = observe(placed, begin_attempt(placed));
        CHECK_NEAR(deg_from_rad(point.path_error_rad), 0.7 * (1 - choice), 1e-9);
        CHECK_NEAR(point.distance_m, there_m, 1e-6);
        const Lesson speed = flown.with(StationRow::speed, choice);
        CHECK_NEAR(kt_from_mps(speed.start.cas_mps), 65.0 + 10.0 * (1 - choice), 1e-9);
        CHECK(speed.start.offset_rad == flown.now().start.offset_rad);
    }
}

TEST_CASE("station: pressed a hundred times at a standstill, high and low drift nowhere") {
    Flown flown(half_a_minute);
    const double there_m = observe(flown.scenario, flown.attempt).distance_m;
    for (int i = 0; i < 100; ++i) {
        flown.scenario = scenario_in(flown.scenario, flown.with(StationRow::path, i % 2 == 0 ? 0 : 2));
        flown.attempt = begin_attempt(flown.scenario);
    }
    CHECK_NEAR(observe(flown.scenario, flown.attempt).distance_m, there_m, 1e-6);
}

TEST_CASE("station: over the threshold and on the ground an approach is begun where it was put last") {
    Flown flown(half_a_minute);
    const Start began = flown.scenario.lesson.start;
    while (observe(flown.scenario, flown.attempt).distance_m > 460.0)
        tick(flown.scenario, flown.attempt, flown.attempt.controls);
    CHECK(start_now(flown.scenario, flown.attempt, began) == began);
    CHECK_FALSE(start_as_it_is(flown.scenario, flown.attempt) == began);
    const Lesson low = flown.with(StationRow::path, 2);
    CHECK(low.start.distance_m == began.distance_m);
    CHECK_NEAR(deg_from_rad(low.start.offset_rad), -0.7, 1e-9);
}

TEST_CASE("station: on the ground, however far from the aim point, it is begun where it was put last") {
    Flown flown(half_a_minute);
    const Start began = flown.scenario.lesson.start;
    CHECK_FALSE(start_now(flown.scenario, flown.attempt, began) == began);
    flown.attempt.on_ground = true;
    REQUIRE(start_as_it_is(flown.scenario, flown.attempt).distance_m > nearest_start_m);
    CHECK(start_now(flown.scenario, flown.attempt, began) == began);
}

TEST_CASE("station: half-way between two choices of place or speed, none of them stands") {
    Flown flown(0);
    const auto now = [&](StationRow row) { return choice_now(row, flown.scenario, flown.attempt); };
    Start& start = flown.scenario.lesson.start;
    start.offset_rad = rad_from_deg(0.5 * off_path_deg);
    start.cas_mps = flown.scenario.lesson.target_cas_mps - mps_from_kt(0.5 * station_speed_step_kt);
    CHECK(now(StationRow::path) == -1);
    CHECK(now(StationRow::speed) == -1);
    // A quarter of the step is the choice still.
    start.offset_rad = rad_from_deg(0.24 * off_path_deg);
    start.cas_mps = flown.scenario.lesson.target_cas_mps - mps_from_kt(0.76 * station_speed_step_kt);
    CHECK(now(StationRow::path) == 1);
    CHECK(now(StationRow::speed) == 2);
}

TEST_CASE("station: a lesson's own wind and gusts are none of the choices until one is chosen") {
    Flown flown(0);
    Lesson& lesson = flown.scenario.lesson;
    lesson.wind.kind = Wind::Kind::logarithmic;
    lesson.wind.headwind_mps = mps_from_kt(headwinds_kt[0]);
    lesson.air_event_count = 1;
    CHECK(choice_now(StationRow::headwind, flown.scenario, flown.attempt) == -1);
    CHECK(choice_now(StationRow::gusts, flown.scenario, flown.attempt) == -1);
    for (const StationRow row : {StationRow::headwind, StationRow::gusts}) {
        lesson = flown.with(row, 1);
        CHECK(choice_now(row, flown.scenario, flown.attempt) == 1);
    }
    CHECK(lesson.air_event_count == 0);
}

TEST_CASE("station: what fails after ten seconds works until then") {
    const Scenario base = shipped_scenario("final_calm");
    Failure failure;
    failure.kind = Failure::Kind::airspeed_blank;
    failure.trigger = Failure::Trigger::time;
    failure.at = 10.0;
    for (const bool later : {false, true}) {
        const Flown flown(scenario_in(base, with_failure(base.lesson, failure)), (later ? 11 : 9) * 120);
        CAPTURE(later);
        CHECK(has_failed(flown.scenario, flown.attempt, failure.kind) == later);
        CHECK(choice_now(StationRow::airspeed, flown.scenario, flown.attempt) == (later ? 1 : 0));
    }
}

TEST_CASE("station: however low it is, the start keeps half a degree above the aim point") {
    Flown flown(half_a_minute);
    flown.attempt.flight.z_m = 1.0;
    const Start start = start_now(flown.scenario, flown.attempt, flown.scenario.lesson.start);
    CHECK_NEAR(deg_from_rad(start.offset_rad), 0.5 - 3.0, 1e-9);
}

TEST_CASE("station: what has failed goes on failing, and what waits for a place waits for it") {
    Failure failure;
    failure.kind = Failure::Kind::airspeed_blank;
    failure.trigger = Failure::Trigger::distance;
    const Scenario base = shipped_scenario("final_calm");
    const double there_m = observe(base, Flown(half_a_minute).attempt).distance_m;
    for (const bool happened : {true, false}) {
        CAPTURE(happened);
        failure.at = there_m + (happened ? 100.0 : -500.0);
        const Flown flown(scenario_in(base, with_failure(base.lesson, failure)), half_a_minute);
        CHECK(flown.attempt.conditions.failed[0] == happened);
        CHECK(choice_now(StationRow::airspeed, flown.scenario, flown.attempt) == (happened ? 1 : 0));
        // Put further out than where it failed, it still has failed; what did not, has not.
        const Scenario after = scenario_in(flown.scenario, flown.with(StationRow::distance, 0));
        Attempt attempt = begin_attempt(after);
        tick(after, attempt, attempt.controls);
        CHECK(shown_airspeed_mps(after, attempt.conditions, 30.0).has_value() != happened);
    }
}

TEST_CASE("station: what fails is felt in the first tick, and restored it is not") {
    const Flown flown(half_a_minute);
    const auto first_tick = [&](const Lesson& lesson) {
        std::pair<Scenario, Attempt> there{scenario_in(flown.scenario, lesson), {}};
        there.second = begin_attempt(there.first);
        tick(there.first, there.second, there.second.controls);
        return there;
    };
    {
        const auto [scenario, attempt] = first_tick(flown.with(StationRow::airspeed, 2));
        CHECK(shown_airspeed_mps(scenario, attempt.conditions, 99.0) != 99.0);
    }
    {
        const auto [scenario, attempt] = first_tick(flown.with(StationRow::flap_failure, 1));
        CHECK(disturbance_of(scenario, attempt.conditions).flap_stuck);
    }
    for (int choice = 0; choice < 3; ++choice) {
        const auto [scenario, attempt] = first_tick(flown.with(StationRow::power, choice));
        CHECK(disturbance_of(scenario, attempt.conditions).power_limit == 1.0 - 0.5 * choice);
    }
    for (int choice = 0; choice < 6; ++choice) {
        const auto [scenario, attempt] = first_tick(flown.with(StationRow::unit_out, choice));
        const LightFaults faults = light_faults(scenario, attempt.conditions);
        CHECK(faults.all_out == (choice == 5));
        for (int unit = 0; unit < 4; ++unit)
            CHECK(faults.out[static_cast<std::size_t>(unit)] == (unit + 1 == choice));
    }
    {
        const auto [scenario, attempt] = first_tick(flown.with(StationRow::unit_misaimed, 2));
        CHECK_NEAR(light_faults(scenario, attempt.conditions).aim_error_rad[1], rad_from_minutes(20.0),
                   1e-12);
    }
    {
        const auto [scenario, attempt] = first_tick(flown.with(StationRow::lenses, 1));
        CHECK(light_faults(scenario, attempt.conditions).condensation == 0.8);
        const auto [well, then] = first_tick(with_nothing_failing(scenario, attempt, scenario.lesson.start));
        CHECK(light_faults(well, then.conditions).condensation == 0.0);
        CHECK(well.lesson.failure_count == 0);
    }
}

TEST_CASE("station: two kinds of failure stand side by side, and a row's choices replace each other") {
    Flown flown(0);
    const auto press = [&](StationRow row, int choice) {
        flown.scenario = scenario_in(flown.scenario, flown.with(row, choice));
        flown.attempt = begin_attempt(flown.scenario);
    };
    press(StationRow::unit_out, 1);
    press(StationRow::airspeed, 1);
    press(StationRow::airspeed, 2);
    press(StationRow::power, 1);
    CHECK(flown.scenario.lesson.failure_count == 3);
    CHECK(choice_now(StationRow::unit_out, flown.scenario, flown.attempt) == 1);
    CHECK(choice_now(StationRow::airspeed, flown.scenario, flown.attempt) == 2);
    CHECK(choice_now(StationRow::power, flown.scenario, flown.attempt) == 1);
    // A lesson that is full of failures gives up the one listed first, never more than it can hold.
    for (int i = 0; i < 12; ++i) add_failure(flown.scenario.lesson, Failure::Kind::light_out, 0.0, i % 4);
    CHECK(flown.scenario.lesson.failure_count == static_cast<int>(most_failures));
    CHECK(flown.scenario.lesson.failures[7].unit == 3);
}

TEST_CASE("station: begun again it is as it was put, and mirrored on the other side of the path") {
    Flown flown(half_a_minute);
    Start began = flown.scenario.lesson.start;
    began.offset_rad = rad_from_deg(off_path_deg);
    CHECK(begun_again(flown.scenario, began).start == began);
    CHECK(begun_mirrored(flown.scenario, began).start.offset_rad == -began.offset_rad);
    CHECK(begun_mirrored(flown.scenario, began).start.distance_m == began.distance_m);
}

TEST_CASE(
    "station: with landing flap and on speed every aeroplane flies every distance, side, speed and wind") {
    const Scenario base = shipped_scenario("final_calm");
    for (const Aircraft& aircraft : shipped().aircraft) {
        Lesson lesson = base.lesson;
        lesson.target_cas_mps = lesson.start.cas_mps = aircraft.approach_speed_mps;
        lesson.start.flap = landing_flap(aircraft);
        const Scenario there = make_scenario(lesson, aircraft, base.surroundings.runway);
        CAPTURE(aircraft.id);
        for (const StationRow row : {StationRow::distance, StationRow::path, StationRow::headwind}) {
            for (int choice = 0; choice < choice_count(row, there); ++choice) {
                CAPTURE(choice);
                const Lesson changed = with_choice(row, choice, there, begin_attempt(there), lesson.start);
                CHECK(scenario_in(there, changed).start_trim.reason == "");
            }
        }
    }
}
