// One try: how scoring ends, touchdown, rest.
#include "lesson/attempt.h"

#include "base/units.h"
#include "flight/aerodynamics.h"
#include "lesson/approach_choice.h"
#include "record/recording.h"
#include "tests/check.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

// Flies on with fixed hands until `done` or so many seconds; returns what happened on the way.
template <class Done>
Events fly_on(const Scenario& scenario, Attempt& attempt, const ControlPositions& hands, double seconds,
              Done done) {
    Events all;
    const std::int64_t last = attempt.tick + static_cast<std::int64_t>(seconds / tick_s);
    while (attempt.tick < last && !done(attempt)) {
        const Events events = tick(scenario, attempt, quantize(hands));
        all.scoring_ended |= events.scoring_ended;
        all.touched_down |= events.touched_down;
        all.came_to_rest |= events.came_to_rest;
        if (attempt.at_rest) break;
    }
    return all;
}

bool scored_out(const Attempt& attempt) { return attempt.end != End::none; }

}  // namespace

TEST_CASE("attempt: on the path and left alone, scoring ends as the wheels pass 50 ft") {
    const Scenario scenario = shipped_scenario("final_calm");
    const Flight flight = fly_good(scenario, 1);
    CHECK(flight.attempt.end == End::reached_floor);
    const double height_ft = ft_from_m(wheel_height_m(scenario.aircraft, flight.attempt.flight));
    CHECK(height_ft <= 50.0);
    CHECK(height_ft > 49.9);  // one tick of sink at 350 ft/min is 0.05 ft
}

TEST_CASE("attempt: a go-around that is said ends scoring at once") {
    const Scenario scenario = shipped_scenario("final_calm");
    Attempt attempt = begin_attempt(scenario);
    ControlPositions hands = scenario.start_trim.controls;
    hands.go_around = true;
    CHECK(tick(scenario, attempt, quantize(hands)).scoring_ended);
    CHECK(attempt.end == End::went_around);
    CHECK(attempt.end_tick == 1);
}

TEST_CASE("attempt: full power and two seconds of climb are a go-around though nobody said so") {
    const Scenario scenario = shipped_scenario("final_calm");
    Attempt attempt = begin_attempt(scenario);
    ControlPositions hands = scenario.start_trim.controls;
    hands.throttle = 1.0;
    fly_on(scenario, attempt, hands, 60.0, scored_out);
    CHECK(attempt.end == End::went_around);
    CHECK(attempt.flight.vz_mps > mps_from_fpm(100.0));
    CHECK(time_s(attempt) > 2.0);
}

TEST_CASE("attempt: with idle power the wheels meet the ground short of the runway, and that is said") {
    const Scenario scenario = shipped_scenario("from_below");
    Attempt attempt = begin_attempt(scenario);
    ControlPositions hands = scenario.start_trim.controls;
    hands.throttle = 0.0;
    fly_on(scenario, attempt, hands, 300.0, scored_out);
    CHECK(attempt.end == End::ground_short);
    CHECK(attempt.flight.x_m < 0.0);
    CHECK(attempt.on_ground);
}

TEST_CASE("attempt: low and far out is not the end: 50 ft counts only near the threshold") {
    Scenario scenario = shipped_scenario("from_below");
    scenario.start_state.x_m = -1500.0;
    scenario.start_state.z_m = m_from_ft(40.0);
    Attempt attempt = begin_attempt(scenario);
    tick(scenario, attempt, attempt.controls);
    CHECK(attempt.end == End::none);
}

TEST_CASE("attempt: flown level over the whole runway, scoring ends past its far end") {
    const Scenario scenario = shipped_scenario("final_calm");
    const TrimState level =
        solve_trim(scenario.aircraft, scenario.surroundings, {mps_from_kt(65), 2, 0.0, 100.0});
    REQUIRE(level.flyable);
    Attempt attempt = begin_attempt(scenario);
    attempt.flight = trimmed_start({mps_from_kt(65), 2, 0.0, 100.0}, level, -200.0);
    fly_on(scenario, attempt, level.controls, 120.0, scored_out);
    CHECK(attempt.end == End::overflew);
    CHECK(attempt.flight.x_m > scenario.surroundings.runway.length_m);
}

TEST_CASE(
    "attempt: flown on with closed throttle it touches down, rolls out and comes to rest on the runway") {
    const Scenario scenario = shipped_scenario("final_calm");
    Flight flight = fly_good(scenario, 1);
    ControlPositions hands = positions_of(flight.attempt.controls);
    hands.throttle = 0.0;
    const Events events =
        fly_on(scenario, flight.attempt, hands, 200.0, [](const Attempt&) { return false; });
    CHECK(events.touched_down);
    CHECK(events.came_to_rest);
    CHECK(flight.attempt.at_rest);
    CHECK(flight.attempt.flight.x_m > 0.0);
    CHECK(flight.attempt.flight.x_m < scenario.surroundings.runway.length_m);
    const std::uint64_t rested = state_hash(flight.attempt);
    tick(scenario, flight.attempt, quantize(hands));
    CHECK(state_hash(flight.attempt) == rested);  // at rest nothing moves any more
}

TEST_CASE("attempt: the stall warning sounds before the stall and not on the approach") {
    const Scenario scenario = shipped_scenario("final_calm");
    Attempt attempt = begin_attempt(scenario);
    CHECK_FALSE(stall_warning(scenario, attempt));
    ControlPositions hands = scenario.start_trim.controls;
    hands.throttle = 0.0;
    hands.stick = 0.7;
    fly_on(scenario, attempt, hands, 30.0, [&](const Attempt& now) { return stall_warning(scenario, now); });
    REQUIRE(stall_warning(scenario, attempt));
    const FlightForces forces = forces_at(scenario.aircraft, scenario.surroundings, hands, attempt.flight);
    CHECK(forces.alpha_rad < stall_alpha_rad(scenario.aircraft, flap_effect(scenario.aircraft, 2.0)));
}

TEST_CASE(
    "attempt: a touchdown far up a rising runway ends scoring, though it lies over 50 ft above the "
    "threshold") {
    Scenario scenario = shipped_scenario("final_calm");
    scenario.surroundings.runway.slope = 0.04;
    Attempt attempt = begin_attempt(scenario);
    attempt.flight.x_m = 500.0;
    attempt.flight.z_m = 0.04 * 500.0 + scenario.aircraft.geometry.wheels_down_m + 1.0;
    ControlPositions hands = scenario.start_trim.controls;
    hands.throttle = 0.0;
    CHECK(fly_on(scenario, attempt, hands, 20.0, scored_out).touched_down);
    CHECK(attempt.end == End::reached_floor);
}

TEST_CASE("attempt: rolling off the far end of a rising runway is on level ground again, and comes to rest") {
    Scenario scenario = shipped_scenario("final_calm");
    Runway& runway = scenario.surroundings.runway;
    runway.slope = 0.0;
    Attempt attempt = begin_attempt(scenario);
    attempt.flight.x_m = runway.length_m - 5.0;
    attempt.flight.z_m = scenario.aircraft.geometry.wheels_down_m;
    attempt.flight.vx_mps = 15.0;
    attempt.flight.vz_mps = 0.0;
    ControlPositions hands = scenario.start_trim.controls;
    hands.throttle = 0.0;
    CHECK(fly_on(scenario, attempt, hands, 60.0, [](const Attempt&) { return false; }).came_to_rest);
    CHECK(attempt.flight.x_m > runway.length_m);

    // A recording of it does not grow once nothing moves.
    Recording recording = begin_recording(scenario.lesson);
    record(recording, attempt.controls, attempt);
    const std::size_t hashes = recording.hashes.size(), changes = recording.changes.size();
    tick(scenario, attempt, quantize(hands));
    record(recording, quantize(ControlPositions{}), attempt);
    CHECK(recording.hashes.size() == hashes);
    CHECK(recording.changes.size() == changes);
}

TEST_CASE("attempt: mirrored starts lie equally far on either side of the path") {
    for (const int distance_nm : choice_distances_nm) {
        const Lesson& base = *find_lesson(shipped(), "final_calm");
        const auto error_rad = [&](StartSide side) {
            const Scenario scenario = scenario_of(shipped(), lesson_of({distance_nm, side, 10.0}, base));
            return observe(scenario, begin_attempt(scenario)).path_error_rad;
        };
        CHECK_NEAR(error_rad(StartSide::above), rad_from_deg(off_path_deg), 1e-12);
        CHECK_NEAR(error_rad(mirrored(StartSide::above)), -rad_from_deg(off_path_deg), 1e-12);
        CHECK_NEAR(error_rad(mirrored(StartSide::on)), 0.0, 1e-12);
        CHECK_NEAR(error_rad(mirrored(StartSide::below)), rad_from_deg(off_path_deg), 1e-12);
    }
}
