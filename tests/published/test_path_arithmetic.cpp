// Feet a mile, feet a minute, and what a headwind does to them, against printed rows.
#include "base/exact_math.h"
#include "base/units.h"
#include "flight/trim.h"
#include "review/summary.h"
#include "tests/check.h"
#include "tests/fixtures.h"
#include "world/sight.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

// The sink the summary holds a flight to, in ft/min, for a ground speed on a path: what a flight that does
// not sink at all is said to lack.
double reference_sink_fpm(double ground_speed_kt, double path_deg) {
    Scenario scenario = shipped_scenario("final_calm");
    scenario.surroundings.runway.lights.nominal_path_rad = rad_from_deg(path_deg);
    TrackPoint level;
    level.ground_speed_mps = mps_from_kt(ground_speed_kt);
    return -fpm_from_mps(deviations(scenario, level).sink_mps);
}

TrimState on_path(double tas_kt, double headwind_kt) {
    Surroundings surroundings = still_air();
    surroundings.wind.headwind_mps = mps_from_kt(headwind_kt);
    // At sea level in standard air calibrated airspeed is true airspeed.
    return solve_trim(tourer(), surroundings, {mps_from_kt(tas_kt), 2, rad_from_deg(-3.0), 0.0});
}

}  // namespace

TEST_CASE("path: 3 degrees are 318 ft a nautical mile, and so on for other angles") {
    // 318 ft/NM is the standard descent gradient of US terminal procedures (Order 8260.3, as quoted); the
    // other rows are 6,076.115 tan(angle), worked out apart to a tenth.
    const struct {
        double path_deg, ft_per_nm;
    } rows[] = {{2.5, 265.3}, {2.75, 291.9}, {3.0, 318.4}, {3.25, 345.0},
                {3.5, 371.6}, {4.0, 424.9},  {4.5, 478.2}};
    for (const auto& row : rows) {
        Runway runway = plain_runway();
        runway.lights.nominal_path_rad = rad_from_deg(row.path_deg);
        CHECK_NEAR(ft_from_m(path_height_m(runway, m_from_nm(1.0))), row.ft_per_nm, 0.051);
    }
    CHECK_NEAR(ft_from_m(path_height_m(plain_runway(), m_from_nm(1.0))), 318.0, 0.5);  // as printed
}

TEST_CASE("path: the sink reference is that of the printed rate-of-descent tables") {
    // US Terminal Procedures, rate of descent table, rounded there to 5 ft/min and up to 4 off the exact
    // value.
    const struct {
        double path_deg, ground_speed_kt, fpm;
    } rows[] = {
        {3.0, 30.0, 160.0},  {3.0, 45.0, 240.0},  {3.0, 60.0, 320.0},  {3.0, 75.0, 395.0},
        {3.0, 90.0, 480.0},  {3.0, 105.0, 555.0}, {3.0, 120.0, 635.0}, {3.0, 135.0, 715.0},
        {3.0, 150.0, 795.0}, {3.0, 165.0, 875.0}, {3.0, 180.0, 955.0}, {2.5, 60.0, 265.0},
        {2.5, 90.0, 395.0},  {2.5, 120.0, 530.0}, {3.5, 60.0, 370.0},  {3.5, 90.0, 555.0},
        {3.5, 120.0, 740.0},
    };
    for (const auto& row : rows) {
        CAPTURE(row.ground_speed_kt);
        CHECK_NEAR(reference_sink_fpm(row.ground_speed_kt, row.path_deg), row.fpm, 4.0);
    }
    // An operator's table for 3 degrees, printed to 1 ft/min from 120 to 180 kt; it rounds its gradient
    // to 5.23 %.
    const struct {
        double ground_speed_kt, fpm;
    } fine_rows[] = {{120.0, 636.0}, {130.0, 689.0}, {140.0, 743.0}, {150.0, 795.0},
                     {160.0, 848.0}, {170.0, 901.0}, {180.0, 955.0}};
    for (const auto& row : fine_rows) CHECK_NEAR(reference_sink_fpm(row.ground_speed_kt, 3.0), row.fpm, 2.0);
}

TEST_CASE("path: ground speed times 101.27 times the tangent is the sink in feet a minute") {
    // Worked out apart to a tenth.
    const struct {
        double ground_speed_kt, fpm;
    } rows[] = {{60.0, 318.4},  {70.0, 371.5},  {75.0, 398.0}, {90.0, 477.7},
                {105.0, 557.3}, {120.0, 636.9}, {140.0, 743.0}};
    for (const auto& row : rows) CHECK_NEAR(reference_sink_fpm(row.ground_speed_kt, 3.0), row.fpm, 0.1);
}

TEST_CASE("path: five times the ground speed, the rule of thumb, is 5.8 percent low at 65 knots") {
    // 325 against 345 ft/min.
    const double exact_fpm = reference_sink_fpm(65.0, 3.0);
    CHECK_NEAR(exact_fpm, 345.0, 0.5);
    CHECK_NEAR(100.0 * (1.0 - 5.0 * 65.0 / exact_fpm), 5.8, 0.05);
}

TEST_CASE("path: a headwind takes sink away at the same airspeed, and flattens the path through the air") {
    // 65 kt true on 3 degrees over the ground: 345, 292, 265 and 239 ft/min in 0, 10, 15 and 20 kt,
    // and 3.00, 2.54 and 2.08 degrees through the air in 0, 10 and 20 kt; worked out apart.
    const struct {
        double headwind_kt, fpm, air_path_deg;
    } rows[] = {{0.0, 345.0, 3.00}, {10.0, 292.0, 2.54}, {15.0, 265.0, 0.0}, {20.0, 239.0, 2.08}};
    double power_before = 0.0;
    for (const auto& row : rows) {
        CAPTURE(row.headwind_kt);
        const TrimState trim = on_path(65.0, row.headwind_kt);
        CHECK(trim.flyable);
        CHECK_NEAR(fpm_from_mps(trim.sink_mps), row.fpm, 1.0);
        if (row.air_path_deg > 0.0) CHECK_NEAR(-deg_from_rad(trim.air_path_rad), row.air_path_deg, 0.01);
        CHECK(trim.power > power_before);  // and it wants more power
        power_before = trim.power;
        // Over the ground it is 3 degrees exactly.
        CHECK_NEAR(deg_from_rad(exact::atan2(trim.sink_mps, trim.ground_speed_mps)), 3.0, 1e-9);
    }
}
