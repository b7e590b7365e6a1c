// Why more power in a headwind: the table against figures worked out apart, and against itself.
#include "base/exact_math.h"
#include "base/units.h"
#include "station/headwind_table.h"
#include "tests/check.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

// Flown at so many knots true (kt) half a mile out, whatever the air there makes of it.
Scenario at_true_airspeed(double tas_kt) {
    Scenario scenario = shipped_scenario("final_calm");
    const Runway& runway = scenario.surroundings.runway;
    const double altitude_m = runway.elevation_m + aim_point(runway).z_m +
                              headwind_table_m * exact::tan(runway.lights.nominal_path_rad);
    scenario.lesson.target_cas_mps =
        cas_from_tas_mps(mps_from_kt(tas_kt), air_at(scenario.surroundings.air, altitude_m));
    return scenario;
}

}  // namespace

TEST_CASE("headwind table: at 65 kt true down 3 degrees it sinks 345, 292, 265, 239 ft/min") {
    // Worked out apart: (65 cos a - headwind) tan 3 degrees, and a = 3.00, 2.54, 2.08 degrees through the air
    // at 0, 10 and 20 kt. The tolerances are half of the last digit given, and a hundredth, since the first
    // is 344.499 to more digits.
    const struct {
        double headwind_kt, sink_fpm, air_path_deg;
    } rows[] = {{0, 345, 3.00}, {10, 292, 2.54}, {15, 265, -1}, {20, 239, 2.08}};
    const auto table = headwind_table(at_true_airspeed(65), headwind_table_m);
    for (const auto& expected : rows) {
        const HeadwindRow& row = table[static_cast<std::size_t>(expected.headwind_kt / 5)];
        CAPTURE(expected.headwind_kt);
        REQUIRE(row.flyable);
        CHECK_NEAR(kt_from_mps(row.headwind_mps), expected.headwind_kt, 1e-9);
        CHECK_NEAR(fpm_from_mps(row.sink_mps), expected.sink_fpm, 0.51);
        if (expected.air_path_deg > 0)
            CHECK_NEAR(deg_from_rad(row.air_path_rad), expected.air_path_deg, 0.005);
    }
}

TEST_CASE("headwind table: each stronger headwind asks for more power and more lever, and sinks less") {
    for (const Aircraft& aircraft : shipped().aircraft) {
        Scenario scenario = shipped_scenario("final_calm");
        scenario.lesson.target_cas_mps = aircraft.approach_speed_mps;
        scenario.aircraft = aircraft;
        const auto table = headwind_table(scenario, headwind_table_m);
        CAPTURE(aircraft.id);
        for (std::size_t i = 1; i < table.size(); ++i) {
            CAPTURE(headwinds_kt[i]);
            REQUIRE(table[i].flyable);
            CHECK(table[i].power > table[i - 1].power);
            CHECK(table[i].lever > table[i - 1].lever);
            CHECK(table[i].sink_mps < table[i - 1].sink_mps);
            CHECK(table[i].pitch_rad > table[i - 1].pitch_rad);
            // The same path over the ground: sink is ground speed times its slope, in a pilot's units 5.31
            // times it at 3 degrees (101.27 tan 3; "five times the ground speed" is common practice, no
            // source).
            const double path = exact::tan(scenario.surroundings.runway.lights.nominal_path_rad);
            CHECK_NEAR(table[i].sink_mps, table[i].ground_speed_mps * path, 1e-9);
            CHECK_NEAR(fpm_from_mps(table[i].sink_mps) / kt_from_mps(table[i].ground_speed_mps), 5.31, 0.01);
            // 5 kt less a little: the flatter way through the air is faster along the ground by 0.02 m/s.
            CHECK_NEAR(table[i - 1].ground_speed_mps - table[i].ground_speed_mps, mps_from_kt(5.0), 0.03);
        }
    }
}

TEST_CASE("headwind table: the lesson's own wind changes nothing in it, and what cannot be flown says so") {
    Scenario scenario = shipped_scenario("final_calm");
    const auto calm = headwind_table(scenario, headwind_table_m);
    scenario.surroundings.wind.headwind_mps = mps_from_kt(18.0);
    const auto windy = headwind_table(scenario, headwind_table_m);
    for (std::size_t i = 0; i < calm.size(); ++i) CHECK(calm[i].power == windy[i].power);
    scenario.lesson.target_cas_mps = mps_from_kt(30.0);  // below the stall
    for (const HeadwindRow& row : headwind_table(scenario, headwind_table_m)) CHECK_FALSE(row.flyable);
}
