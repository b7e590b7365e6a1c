// What the air does and what fails during an attempt, when, and what is seen of it.
#include <cmath>

#include "base/units.h"
#include "lesson/conditions.h"
#include "review/track.h"
#include "tests/check.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

Scenario with_failure(const Failure& failure) {
    Lesson lesson = shipped().lessons.front();
    lesson.failures[0] = failure;
    lesson.failure_count = 1;
    return scenario_of(shipped(), lesson);
}

Attempt fly_for(const Scenario& scenario, double seconds) {
    Attempt attempt = begin_attempt(scenario);
    while (time_s(attempt) < seconds) tick(scenario, attempt, attempt.controls);
    return attempt;
}

double cas_of(const Scenario& scenario, const Attempt& attempt) { return observe(scenario, attempt).cas_mps; }

Failure at_time(Failure::Kind kind, double time_s, double amount = 0.0, int unit = 0) {
    return {kind, Failure::Trigger::time, time_s, amount, unit};
}

}  // namespace

TEST_CASE("failures: each begins at its time, its distance or its height, and not before") {
    const auto first_tick = [](const Failure& failure) {
        const Scenario scenario = with_failure(failure);
        Attempt attempt = begin_attempt(scenario);
        while (!attempt.conditions.failed[0] && attempt.tick < 40000)
            tick(scenario, attempt, attempt.controls);
        return attempt;
    };
    CHECK_NEAR(time_s(first_tick(at_time(Failure::Kind::power_lost, 10.0))), 10.0, 2.5 * tick_s);
    const Scenario scenario = shipped_scenario("final_calm");
    const Attempt near_a_mile =
        first_tick({Failure::Kind::power_lost, Failure::Trigger::distance, m_from_nm(2.0), 0.0, 0});
    CHECK_NEAR(observe(scenario, near_a_mile).distance_m, m_from_nm(2.0), 1.0);  // 33 m/s a tick: 0.3 m
    const Attempt low =
        first_tick({Failure::Kind::power_lost, Failure::Trigger::height, m_from_ft(700.0), 0.0, 0});
    CHECK_NEAR(ft_from_m(observe(scenario, low).wheel_height_m), 700.0, 0.2);  // 6 ft/s a tick: 0.05 ft
}

TEST_CASE(
    "failures: a blank airspeed shows nothing, a stuck one what it showed then; the truth stays in the "
    "track") {
    const Scenario blank = with_failure(at_time(Failure::Kind::airspeed_blank, 2.0));
    const Attempt before = fly_for(blank, 1.5), after = fly_for(blank, 3.0);
    CHECK(shown_airspeed_mps(blank, before.conditions, 33.0) == 33.0);
    CHECK(!shown_airspeed_mps(blank, after.conditions, 33.0).has_value());
    CHECK(cas_of(blank, after) > 30.0);

    const Scenario stuck = with_failure(at_time(Failure::Kind::airspeed_stuck, 2.0));
    Attempt attempt = fly_for(stuck, 2.1);
    const double shown_mps = shown_airspeed_mps(stuck, attempt.conditions, 99.0).value_or(0.0);
    CHECK_NEAR(shown_mps, cas_of(stuck, attempt), 0.1);  // what it was a tenth of a second ago
    Controls push = attempt.controls;
    push.stick = -12000;
    while (time_s(attempt) < 8.0) tick(stuck, attempt, push);
    CHECK(shown_airspeed_mps(stuck, attempt.conditions, cas_of(stuck, attempt)) == shown_mps);
    CHECK(cas_of(stuck, attempt) > shown_mps + 3.0);
}

TEST_CASE("failures: an indicator that is blank stays blank, though it sticks as well") {
    Lesson lesson = shipped().lessons.front();
    lesson.failures[0] = at_time(Failure::Kind::airspeed_blank, 1.0);
    lesson.failures[1] = at_time(Failure::Kind::airspeed_stuck, 2.0);
    lesson.failure_count = 2;
    const Scenario scenario = scenario_of(shipped(), lesson);
    const Attempt attempt = fly_for(scenario, 3.0);
    CHECK_FALSE(shown_airspeed_mps(scenario, attempt.conditions, 30.0).has_value());
}

TEST_CASE("failures: a stuck flap stays where it is, whatever the lever says") {
    const Scenario scenario = with_failure(at_time(Failure::Kind::flap_stuck, 1.0));
    Attempt attempt = fly_for(scenario, 1.1);
    const double stood_at = attempt.flight.flap;
    Controls up = attempt.controls;
    up.flap = 0;
    while (time_s(attempt) < 10.0) tick(scenario, attempt, up);
    CHECK(attempt.flight.flap == stood_at);
}

TEST_CASE(
    "failures: with part of its power an engine gives that part at full lever, with none it windmills") {
    const auto power_at_full_lever = [](const Failure& failure) {
        const Scenario scenario = with_failure(failure);
        Attempt attempt = begin_attempt(scenario);
        Controls full = attempt.controls;
        full.throttle = 65535;
        while (time_s(attempt) < 12.0) tick(scenario, attempt, full);
        return attempt.flight.power;
    };
    CHECK_NEAR(power_at_full_lever(at_time(Failure::Kind::power_partial, 0.0, 0.43)), 0.43,
               1e-6);  // 17 lags later
    CHECK_NEAR(power_at_full_lever(at_time(Failure::Kind::power_lost, 0.0)), 0.0, 1e-6);
}

TEST_CASE("failures: lights go out one by one or all, are set wrong, or pale under condensation") {
    const auto faults = [](const Failure& failure) {
        const Scenario scenario = with_failure(failure);
        return light_faults(scenario, fly_for(scenario, 0.5).conditions);
    };
    CHECK(faults(at_time(Failure::Kind::light_out, 0.0, 0.0, 2)).out[2]);
    CHECK(!faults(at_time(Failure::Kind::light_out, 0.0, 0.0, 2)).out[1]);
    CHECK(faults(at_time(Failure::Kind::lights_out, 0.0)).all_out);
    CHECK(faults(at_time(Failure::Kind::light_misaimed, 0.0, 0.003, 1)).aim_error_rad[1] == 0.003);
    CHECK(faults(at_time(Failure::Kind::condensation, 0.0, 0.7)).condensation == 0.7);

    const Scenario dark = with_failure(at_time(Failure::Kind::lights_out, 0.0));
    CHECK(observe(dark, fly_for(dark, 0.5)).white_count == -1);
    const Scenario wet = with_failure(at_time(Failure::Kind::condensation, 0.0, 1.0));
    const TrackPoint seen = observe(wet, fly_for(wet, 0.5));
    CHECK(seen.white_fraction[0] > 0.5);  // a red unit pales past half way: the coding fails unsafe
}

TEST_CASE("conditions: a gust and turbulence move the aeroplane, and a calm lesson's air is still") {
    const Scenario calm = shipped_scenario("final_calm");
    CHECK(fly_for(calm, 5.0).conditions.gust.up_mps == 0.0);

    Lesson rough = shipped().lessons.front();
    rough.turbulence_w20_mps = mps_from_kt(30.0);
    const Scenario scenario = scenario_of(shipped(), rough);
    double least = 0.0, most = 0.0;
    Attempt attempt = begin_attempt(scenario);
    while (time_s(attempt) < 60.0) {
        tick(scenario, attempt, attempt.controls);
        least = std::fmin(least, attempt.conditions.gust.up_mps);
        most = std::fmax(most, attempt.conditions.gust.up_mps);
    }
    CHECK(least < -1.0);  // sigma is 1.5 m/s
    CHECK(most > 1.0);

    Lesson sinking = shipped().lessons.front();
    sinking.air_events[0] = {AirEvent::Kind::sink_patch, AirEvent::Trigger::time, 1.0, 0.0, 0.0, -2.5, 300.0};
    sinking.air_event_count = 1;
    const Scenario sink = scenario_of(shipped(), sinking);
    const double level_m = fly_for(calm, 12.0).flight.z_m, sunk_m = fly_for(sink, 12.0).flight.z_m;
    CHECK(sunk_m < level_m - 5.0);  // 9 s in a mean of 1.25 m/s downwards, less what the aeroplane takes back
    CHECK(sunk_m > level_m - 15.0);  // 11 m, and the phugoid that it starts
}

TEST_CASE(
    "conditions: a lesson may set the mass, and a heavier aeroplane stalls faster and needs more power") {
    Lesson light = shipped().lessons.front(), heavy = light;
    light.mass_kg = 850.0;
    heavy.mass_kg = 1110.0;
    const Scenario a = scenario_of(shipped(), light), b = scenario_of(shipped(), heavy);
    CHECK(a.aircraft.mass_kg == 850.0);
    CHECK(b.start_trim.power > a.start_trim.power);
    // By the square root of the weight, exactly.
    CHECK_NEAR(stall_speed_mps(b.aircraft, 0) / stall_speed_mps(a.aircraft, 0), std::sqrt(1110.0 / 850.0),
               1e-12);
}
