// The good model pilot's go-around, flown on after scoring has ended.
#include <algorithm>

#include "base/units.h"
#include "lesson/approach_choice.h"
#include "lesson/demonstrate.h"
#include "tests/check.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

TEST_CASE("model pilot: a go-around is full power, a climb, and the flap up in stages as it climbs") {
    Lesson lesson = lesson_of({1, StartSide::on, 0.0}, shipped_scenario("final_calm").lesson);
    lesson.start.offset_rad = rad_from_deg(1.2);  // too high to be stable at 300 ft
    const Scenario scenario = scenario_of(shipped(), lesson);
    Attempt attempt = begin_attempt(scenario);
    ModelPilot pilot = pilot_for(scenario, *pilot_skill("good"), 1);
    demonstrate(scenario, attempt, pilot, [](const Controls&, const Events&) {});
    REQUIRE(attempt.end == End::went_around);
    const double begun_m = attempt.flight.z_m;
    CHECK(attempt.controls.flap == 2);

    bool full_power = false, sinking_with_less_flap = false;
    double least_cas_mps = 100.0;
    for (int i = 0; i < 40 * 120; ++i) {
        const Sight sight = sight_of(scenario, attempt);
        const Controls controls = fly(pilot, sight, time_s(attempt));
        full_power = full_power || positions_of(controls).throttle > 0.99;
        sinking_with_less_flap = sinking_with_less_flap || (controls.flap < 2 && sight.sink_mps > 0.5);
        least_cas_mps = std::min(least_cas_mps, sight.cas_mps);
        tick(scenario, attempt, controls);
    }
    CHECK(full_power);
    CHECK_FALSE(sinking_with_less_flap);
    CHECK(attempt.controls.flap == 1);
    // The performance sheet's go-around climb is some 350 ft/min: 40 s of it, with the sink to be stopped
    // first, is 100 ft at the least.
    CHECK(attempt.flight.z_m - begun_m > m_from_ft(100.0));
    CHECK(least_cas_mps > 1.1 * stall_speed_mps(scenario.aircraft, 2));
}

// The pilot's hands after looking once at something invented.
ModelPilot having_seen(const PilotSkill& skill, const Sight& sight, int landing_flap = 2) {
    const PilotPlan plan{.target_cas_mps = mps_from_kt(65.0),
                         .nominal_path_rad = rad_from_deg(3.0),
                         .throttle = 0.4,
                         .calm_throttle = 0.4,
                         .landing_flap = landing_flap};
    ModelPilot pilot = make_pilot(plan, skill, 1, {.throttle = 0.4, .flap = landing_flap});
    for (int i = 0; i < 10 * 120; ++i) fly(pilot, sight, i / 120.0);
    return pilot;
}

ModelPilot having_seen(std::string_view name, const Sight& sight, int landing_flap = 2) {
    return having_seen(*pilot_skill(name), sight, landing_flap);
}

constexpr Sight stable_at_the_gate{.distance_m = 1700.0,
                                   .wheel_height_m = m_from_ft(299.0),
                                   .cas_mps = mps_from_kt(65.0),
                                   .sink_mps = mps_from_fpm(345.0),
                                   .ground_speed_mps = mps_from_kt(65.0)};

TEST_CASE("model pilot: each thing that makes an approach unstable at 300 ft is reason enough to go around") {
    CHECK_FALSE(having_seen("good", stable_at_the_gate).hands.go_around);
    Sight sight = stable_at_the_gate;
    sight.path_error_rad = rad_from_deg(-0.6);
    CHECK(having_seen("good", sight).hands.go_around);
    sight = stable_at_the_gate;
    sight.cas_mps = mps_from_kt(59.0);
    CHECK(having_seen("good", sight).hands.go_around);
    sight.cas_mps = mps_from_kt(76.0);
    CHECK(having_seen("good", sight).hands.go_around);
    sight = stable_at_the_gate;
    sight.sink_mps = mps_from_fpm(810.0);
    CHECK(having_seen("good", sight).hands.go_around);
    CHECK_FALSE(having_seen("presses_on", sight).hands.go_around);
}

TEST_CASE("model pilot: with no flap to raise, a go-around raises none") {
    Sight sight = stable_at_the_gate;
    sight.sink_mps = -mps_from_fpm(300.0);
    sight.path_error_rad = rad_from_deg(2.0);
    CHECK(having_seen("good", sight, 0).hands.flap == 0);
    CHECK(having_seen("good", sight, 2).hands.flap == 1);
}

TEST_CASE("model pilot: one who checks all goes around for the flap or the sink as well") {
    const auto goes_around = [](double flap, double sink_fpm) {
        Sight sight = stable_at_the_gate;
        sight.flap = flap;
        sight.sink_mps = mps_from_fpm(sink_fpm);
        PilotSkill careful;
        careful.checks_all = true;
        return having_seen(careful, sight).hands.go_around;
    };
    CHECK_FALSE(goes_around(2.0, 345.0));
    CHECK(goes_around(1.0, 345.0));
    CHECK(goes_around(2.0, 700.0));
}

TEST_CASE("model pilot: where there is no flap to lower none is, and in a glide all where it does not sink") {
    const auto flap_of = [](const PilotSkill& skill, double sink_mps, int landing_flap) {
        Sight sight = stable_at_the_gate;
        sight.wheel_height_m = m_from_ft(500.0);
        sight.sink_mps = sink_mps;
        const PilotPlan plan{.nominal_path_rad = rad_from_deg(3.0), .landing_flap = landing_flap};
        ModelPilot pilot = make_pilot(plan, skill, 1, {});
        for (int i = 0; i < 25 * 120; ++i) fly(pilot, sight, i / 120.0);
        return pilot.hands.flap;
    };
    PilotSkill by_stages;
    by_stages.first_flap_at_m = m_from_ft(600.0);
    by_stages.flap_at_m = m_from_ft(400.0);
    CHECK(flap_of(by_stages, 1.8, 2) == 1);
    CHECK(flap_of(by_stages, 1.8, 0) == 0);
    PilotSkill gliding;
    gliding.glides = true;
    gliding.flap_at_m = 0.0;
    CHECK(flap_of(gliding, 10.0, 2) == 0);  // it would end short
    CHECK(flap_of(gliding, 0.0, 2) == 2);   // it would never end
}

TEST_CASE("model pilot: one who stretches does so when low, and takes power off when high like anyone") {
    Sight sight = stable_at_the_gate;
    sight.wheel_height_m = m_from_ft(500.0);
    sight.path_error_rad = rad_from_deg(0.8);
    CHECK(having_seen("low_stretch", sight).hands.throttle < 0.4);
    sight.path_error_rad = rad_from_deg(-0.8);
    CHECK(having_seen("low_stretch", sight).hands.throttle == 0.4);
}

TEST_CASE("model pilot: one who ducks under takes power off even over the threshold") {
    Sight sight = stable_at_the_gate;
    sight.distance_m = 150.0;
    sight.wheel_height_m = 8.0;
    CHECK(having_seen("duck_under", sight).hands.throttle < 0.4);
}

TEST_CASE("model pilot: nobody flies under a name that is not in the list") {
    for (const std::string_view name : pilot_names) CHECK(pilot_skill(name).has_value());
    CHECK_FALSE(pilot_skill("nobody").has_value());
}
