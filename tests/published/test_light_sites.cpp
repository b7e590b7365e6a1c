// The other light systems, and the heights that a site's figures give.
#include "base/exact_math.h"
#include "base/units.h"
#include "tests/check.h"
#include "tests/fixtures.h"
#include "world/lights.h"
#include "world/visibility.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

Runway runway_with(LightSite::Kind kind, LightSite::Side side = LightSite::Side::left) {
    Runway runway = plain_runway();
    runway.lights.kind = kind;
    runway.lights.side = side;
    return runway;
}

// On the centreline, so far before the aim point, at an angle above it.
Point3 eye_at(double distance_m, double angle_deg) {
    return {300.0 - distance_m, 0.0, distance_m * exact::tan(rad_from_deg(angle_deg))};
}

void check_settings(LightSite::Kind kind, std::initializer_list<double> expected_deg) {
    const LightSystem lights = make_lights(runway_with(kind));
    REQUIRE(lights.pattern == static_cast<int>(expected_deg.size()));
    std::size_t i = 0;
    for (const double deg : expected_deg) CHECK_NEAR(deg_from_rad(lights.units[i++].setting_rad), deg, 1e-9);
}

}  // namespace

TEST_CASE(
    "light sites: a PAPI agreeing with an electronic glide path is set 35, 15, -15 and -35 minutes off") {
    // FAA AC 150/5345-28 as given by a maker's manual, Table 8, second column: 3 degrees 35', 15', 2 degrees
    // 45', 25'. The on-path band widens from 20' to 30'.
    check_settings(LightSite::Kind::papi_harmonised, {3.0 + 35.0 / 60, 3.25, 2.75, 2.0 + 25.0 / 60});
    const LightSystem lights = make_lights(runway_with(LightSite::Kind::papi_harmonised));
    CHECK_NEAR(deg_from_rad(lights.units[1].setting_rad - lights.units[2].setting_rad), 0.5, 1e-9);
}

TEST_CASE(
    "light sites: an APAPI shows red inside and white outside on its path, both white above, both red "
    "below") {
    // Settings +15' and -15': the same maker's manual, Table 9. Pictures: CS ADR-DSN.M.645(b)(3).
    check_settings(LightSite::Kind::apapi, {3.25, 2.75});
    const LightSystem lights = make_lights(runway_with(LightSite::Kind::apapi));
    const auto white = [&](int unit, double angle_deg) {
        return unit_white_fraction(lights, unit, eye_at(m_from_nm(1.0), angle_deg));
    };
    CHECK(white(0, 3.0) == 0.0);
    CHECK(white(1, 3.0) == 1.0);
    CHECK(white(0, 3.4) == 1.0);
    CHECK(white(1, 3.4) == 1.0);
    CHECK(white(0, 2.6) == 0.0);
    CHECK(white(1, 2.6) == 0.0);
}

TEST_CASE(
    "light sites: a VASI shows red over white on its path, white over white above, red over red below") {
    // AIM figure 2-1-2; Horonjeff figure 8-6. The near bar stands before the far one and is the lower of the
    // two in the picture.
    const LightSystem lights = make_lights(runway_with(LightSite::Kind::vasi));
    REQUIRE(lights.pattern == 2);
    CHECK(lights.units[0].lens.x_m < lights.units[1].lens.x_m);
    const auto white = [&](int bar, double angle_deg) {
        return unit_white_fraction(lights, bar, eye_at(m_from_nm(2.0), angle_deg)) > 0.5;
    };
    CHECK(white(0, 3.0));
    CHECK(!white(1, 3.0));
    CHECK(white(0, 3.8));
    CHECK(white(1, 3.8));
    CHECK(!white(0, 2.2));
    CHECK(!white(1, 2.2));
}

TEST_CASE("light sites: on both sides the bars mirror each other and show the same") {
    for (const LightSite::Kind kind :
         {LightSite::Kind::papi, LightSite::Kind::apapi, LightSite::Kind::vasi}) {
        const LightSystem lights = make_lights(runway_with(kind, LightSite::Side::both));
        REQUIRE(lights.count == 2 * lights.pattern);
        for (int i = 0; i < lights.pattern; ++i) {
            const LightUnit& left = lights.units[static_cast<std::size_t>(i)];
            const LightUnit& right = lights.units[static_cast<std::size_t>(i + lights.pattern)];
            CHECK(left.lens.y_m == -right.lens.y_m);
            CHECK(left.lens.x_m == right.lens.x_m);
            CHECK(left.setting_rad == right.setting_rad);
        }
    }
}

TEST_CASE(
    "light sites: 300 m in, the least eye height over the threshold is 14.67 m, and 52.4 ft on a path 1,000 "
    "ft in") {
    // MEHT = D1 tan(2 degrees 48'), the third unit's setting less 2' (an answer with the ICAO figure). The
    // rest is geometry: 300 m gives 14.67 m = 48.1 ft; 1,000 ft at 3 degrees 52.4 ft.
    Runway runway = plain_runway();
    CHECK_NEAR(meht_m(runway, make_lights(runway)), 14.67, 0.01);
    CHECK_NEAR(ft_from_m(meht_m(runway, make_lights(runway))), 48.1, 0.1);
    runway.aim_distance_m = m_from_ft(1000.0);
    CHECK_NEAR(ft_from_m(threshold_crossing_m(runway)), 52.4, 0.1);
    // Distances for a threshold crossing height at 3 degrees.
    const struct {
        double crossing_ft, distance_ft;
    } rows[] = {{40.0, 763.0}, {45.0, 859.0}, {50.0, 954.0}, {75.0, 1431.0}};
    for (const auto& row : rows) {
        runway.aim_distance_m = m_from_ft(row.distance_ft);
        CHECK_NEAR(ft_from_m(threshold_crossing_m(runway)), row.crossing_ft,
                   0.06);  // the distance's rounding
    }
    // Up a slope of 2 % the aim point stands higher, and with it the eye over the threshold.
    Runway up = plain_runway();
    up.slope = 0.02;
    CHECK_NEAR(threshold_crossing_m(up) - threshold_crossing_m(plain_runway()), 6.0, 1e-9);
}

TEST_CASE("light sites: a light fades by the square of its distance and by what the air takes") {
    // Allard's law in its closed form; Koschmieder's with 5 % contrast left at the visibility.
    CHECK_NEAR(illuminance_lux(15000.0, 1000.0, 0.0), 0.015, 1e-12);
    CHECK_NEAR(contrast_left(8000.0, extinction_per_m(8000.0)), 0.0498, 1e-4);  // exp(-3)
    CHECK_NEAR(illuminance_lux(15000.0, 2000.0, 1e-3), 15000.0 * 0.1353353 / 4e6, 1e-9);
    for (const Background background : {Background::day, Background::dusk, Background::night}) {
        const double extinction = extinction_per_m(20000.0);
        const double range_m = visual_range_m(unit_intensity_cd(background), extinction, background);
        CHECK_NEAR(
            illuminance_lux(unit_intensity_cd(background), range_m, extinction) / threshold_lux(background),
            1.0, 1e-6);
    }
}
