// The same hands in calm air beside a flight in wind.
#include "base/exact_math.h"
#include "base/units.h"
#include "station/calm_beside.h"
#include "tests/check.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

Scenario in_wind(double headwind_kt, double w20_kt = 0.0) {
    Scenario scenario = shipped_scenario("final_calm");
    scenario.lesson.wind.headwind_mps = mps_from_kt(headwind_kt);
    scenario.lesson.turbulence_w20_mps = mps_from_kt(w20_kt);
    return make_scenario(scenario.lesson, scenario.aircraft, scenario.surroundings.runway);
}

CalmBeside beside(const Scenario& scenario, const Flight& flight) {
    CalmBeside calm = begin_calm_beside(scenario);
    catch_up(calm, flight.recording);
    return calm;
}

bool same(const FlightState& a, const FlightState& b) {
    return a.x_m == b.x_m && a.z_m == b.z_m && a.vx_mps == b.vx_mps && a.vz_mps == b.vz_mps &&
           a.pitch_rad == b.pitch_rad && a.power == b.power && a.flap == b.flap;
}

}  // namespace

TEST_CASE("calm beside: where the air is calm already it is the very same flight") {
    const Scenario scenario = in_wind(0.0);
    const Flight flight = fly_good(scenario, 5);
    const CalmBeside calm = beside(scenario, flight);
    CHECK(calm.attempt.tick == flight.attempt.tick);
    CHECK(same(calm.attempt.flight, flight.attempt.flight));
    const CalmDifference difference = calm_difference(calm, flight.track.points.back());
    // Between two points a tenth of a second apart it is taken as flown straight: a millimetre.
    CHECK_NEAR(difference.higher_m, 0.0, 1e-3);
    CHECK_NEAR(difference.faster_mps, 0.0, 1e-3);
}

TEST_CASE("calm beside: before the first tick both are at the same place, at the same airspeed") {
    const Scenario scenario = in_wind(15.0);
    const TrackPoint now = observe(scenario, begin_attempt(scenario));
    const CalmDifference difference = calm_difference(begin_calm_beside(scenario), now);
    CHECK(difference.was_there);
    CHECK(difference.higher_m == 0.0);
    CHECK(difference.earlier_s == 0.0);
    CHECK_NEAR(difference.faster_mps, 0.0, 1e-9);  // the wind added to one and not the other: rounding
}

TEST_CASE("calm beside: hands off from 3 NM in 15 kt it stays as flat over the ground as it was in the air") {
    const Scenario scenario = in_wind(15.0);
    const Controls held = quantize(scenario.start_trim.controls);
    const Flight flight = fly_with(scenario, 60 * 120, [&](const Attempt&) { return held; });
    const CalmBeside calm = beside(scenario, flight);
    const TrackPoint& now = flight.track.points.back();
    const CalmDifference difference = calm_difference(calm, now);
    REQUIRE(difference.was_there);
    // Worked out apart: over the same ground the one sinks by tan 3 degrees, the other by the tangent of the
    // angle through the air; that is what more power in a headwind is for.
    const double flown_m = scenario.lesson.start.distance_m - now.distance_m;
    const double expected_m =
        flown_m * (exact::tan(rad_from_deg(3.0)) + exact::tan(scenario.start_trim.air_path_rad));
    CHECK(expected_m > 15.0);
    CHECK_NEAR(difference.higher_m, expected_m, 1.0);  // denser air lower down, over 60 s: within a metre
    CHECK_NEAR(kt_from_mps(difference.faster_mps), 0.0, 0.1);
    // Over the ground it is faster by the wind: there sooner by the time that makes.
    const double windy_mps = scenario.start_trim.ground_speed_mps;
    CHECK_NEAR(difference.earlier_s, flown_m / windy_mps - flown_m / (windy_mps + mps_from_kt(15.0)), 0.2);
}

TEST_CASE("calm beside: a good pilot's hands in 20 kt of headwind bring the calm flight in high") {
    const Scenario scenario = in_wind(20.0);
    const Flight flight = fly_good(scenario, 7);
    REQUIRE(flight.attempt.end == End::reached_floor);
    const CalmDifference difference =
        calm_difference(beside(scenario, flight), flight.track.points[flight.track.scored - 1]);
    CHECK(difference.was_there);
    CHECK(ft_from_m(difference.higher_m) > 100.0);
}

TEST_CASE("calm beside: who saved power in rising air comes to the ground early without it") {
    Scenario scenario = in_wind(0.0);
    AirEvent& rising = scenario.lesson.air_events[0];
    rising.kind = AirEvent::Kind::sink_patch;
    rising.trigger = AirEvent::Trigger::distance;
    rising.at_distance_m = 4500.0;
    rising.up_mps = 1.5;
    rising.length_m = 4000.0;
    scenario.lesson.air_event_count = 1;
    const Flight flight = fly_good(scenario, 7);
    REQUIRE(flight.attempt.end == End::reached_floor);
    const CalmDifference difference = calm_difference(beside(scenario, flight), flight.track.points.back());
    CHECK(difference.came_down);
    CHECK(difference.short_of_m > flight.track.points.back().distance_m);
}

TEST_CASE("calm beside: caught up tick by tick or in one go, in gusts too, it is the same flight") {
    const Scenario scenario = in_wind(12.0, 20.0);
    const Flight flight = fly_good(scenario, 11);
    const CalmBeside at_once = beside(scenario, flight);
    CalmBeside bit_by_bit = begin_calm_beside(scenario);
    Recording grown = flight.recording;
    for (std::int64_t ticks = 0; ticks <= flight.recording.ticks; ticks += 7) {
        grown.ticks = ticks;
        catch_up(bit_by_bit, grown);
    }
    catch_up(bit_by_bit, flight.recording);
    CHECK(state_hash(at_once.attempt) == state_hash(bit_by_bit.attempt));
    CHECK(at_once.flown.size() == bit_by_bit.flown.size());
    CHECK(at_once.attempt.conditions.gust.along_mps == 0.0);  // no gust reaches it
    CHECK(at_once.attempt.tick > 1000);
}

TEST_CASE("calm beside: what fails, fails there too") {
    Scenario scenario = in_wind(10.0);
    Failure& lost = scenario.lesson.failures[0];
    lost.kind = Failure::Kind::power_lost;
    scenario.lesson.failure_count = 1;
    const Controls held = quantize(scenario.start_trim.controls);
    const Flight flight = fly_with(scenario, 20 * 120, [&](const Attempt&) { return held; });
    const CalmBeside calm = beside(scenario, flight);
    CHECK(calm.attempt.flight.power < 0.5 * scenario.start_state.power);
}

TEST_CASE("calm beside: where it is not yet, heights over the path are compared as both are now") {
    const Scenario scenario = in_wind(-10.0);
    const Controls held = quantize(scenario.start_trim.controls);
    const Flight flight = fly_with(scenario, 10 * 120, [&](const Attempt&) { return held; });
    const CalmBeside calm = beside(scenario, flight);
    const TrackPoint& now = flight.track.points.back();
    const CalmDifference difference = calm_difference(calm, now);
    CHECK_FALSE(difference.was_there);
    CHECK_FALSE(difference.came_down);
    CHECK_NEAR(difference.higher_m, observe(calm.scenario, calm.attempt).path_offset_m - now.path_offset_m,
               1e-9);
}
