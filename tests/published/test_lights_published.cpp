// The slope lights against published angles, colours and places.
#include <algorithm>
#include <cmath>

#include "base/exact_math.h"
#include "base/units.h"
#include "tests/check.h"
#include "tests/fixtures.h"
#include "world/lights.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

LightSystem bar_at(double nominal_deg, LightSite::Side side = LightSite::Side::left) {
    Runway runway = plain_runway();
    runway.lights.nominal_path_rad = rad_from_deg(nominal_deg);
    runway.lights.side = side;
    return make_lights(runway);
}

// An eye on the centreline, at an elevation above the point abeam the lights.
Point3 eye_at(double distance_m, double elevation_deg) {
    return {plain_runway().aim_distance_m - distance_m, 0.0,
            distance_m * exact::tan(rad_from_deg(elevation_deg))};
}

// The four units as the pilot sees them from left to right: W white, R red, p in between.
std::string picture(const LightSystem& bar, const Point3& eye) {
    std::string seen;
    for (int i = 0; i < bar.pattern; ++i) {
        const double white = unit_white_fraction(bar, i, eye);
        seen += white == 1.0 ? 'W' : white == 0.0 ? 'R' : 'p';
    }
    // Units are listed from the runway outwards; left of the runway the outermost is leftmost.
    if (bar.units[0].lens.y_m < 0.0) std::reverse(seen.begin(), seen.end());
    return seen;
}

// Height (ft) on the centreline at which a unit is half white, half red.
double height_of_change_ft(const LightSystem& bar, int index, double distance_m) {
    const LightUnit& unit = bar.units[static_cast<std::size_t>(index)];
    double low_m = 0.0, high_m = distance_m * 0.2;
    for (int i = 0; i < 60; ++i) {
        const double middle_m = 0.5 * (low_m + high_m);
        const Point3 eye{unit.lens.x_m - distance_m, 0.0, unit.lens.z_m + middle_m};
        (unit_white_fraction(bar, index, eye) < 0.5 ? low_m : high_m) = middle_m;
    }
    return ft_from_m(0.5 * (low_m + high_m));
}

}  // namespace

TEST_CASE(
    "lights: the units are set to 3 deg 30', 3 deg 10', 2 deg 50' and 2 deg 30' from the runway outwards") {
    // FAA AC 150/5345-28 and 150/5340-30, as given in a maker's manual (96A0209 Rev AA, Table 8).
    const LightSystem bar = bar_at(3.0);
    CHECK(bar.count == 4);
    const double settings_deg[] = {3.0 + 30.0 / 60.0, 3.0 + 10.0 / 60.0, 2.0 + 50.0 / 60.0,
                                   2.0 + 30.0 / 60.0};
    for (std::size_t i = 0; i < 4; ++i) {
        CHECK_NEAR(deg_from_rad(bar.units[i].setting_rad), settings_deg[i], 1e-9);  // exact but for rounding
    }
}

TEST_CASE("lights: for another nominal path the settings move with it, and lie evenly about it") {
    // The same manual words the settings as above and below the glide path; the path lies midway between the
    // two middle units (ICAO Doc 9157 as cited by an encyclopaedia).
    for (const double nominal_deg : {2.5, 3.5, 4.0}) {
        const LightSystem bar = bar_at(nominal_deg);
        const double minutes[] = {30.0, 10.0, -10.0, -30.0};
        for (std::size_t i = 0; i < 4; ++i) {
            CHECK_NEAR(deg_from_rad(bar.units[i].setting_rad), nominal_deg + minutes[i] / 60.0, 1e-9);
        }
        CHECK_NEAR(deg_from_rad(bar.units[1].setting_rad + bar.units[2].setting_rad) / 2.0, nominal_deg,
                   1e-9);
    }
}

TEST_CASE("lights: the pilot is shown what the AIM says at 3.6, 3.2, 3.0, 2.8 and 2.4 degrees") {
    // AIM 2-1-2, FIG 2-1-5: above 3.5 degrees all white, 3.2 three white, 3.0 two, 2.8 one, below 2.5 none.
    // Seen from 1 NM out and further, where the bar is as good as straight ahead.
    const LightSystem bar = bar_at(3.0);
    const struct {
        double angle_deg;
        int white;
    } rows[] = {{3.6, 4}, {3.2, 3}, {3.0, 2}, {2.8, 1}, {2.4, 0}};
    for (const auto& row : rows) {
        for (const double distance_nm : {1.0, 2.0, 3.0, 5.0}) {
            CAPTURE(row.angle_deg);
            CAPTURE(distance_nm);
            CHECK(white_count(bar, eye_at(m_from_nm(distance_nm), row.angle_deg)) == row.white);
        }
    }
}

TEST_CASE("lights: the red ones are those nearest the runway, on either side of it") {
    // EASA CS ADR-DSN.M.645(b)(2): on the slope the two nearest the runway red and the two farthest white;
    // above, the nearest red, then none; below, the three nearest red, then all.
    const struct {
        double angle_deg;
        const char* left_side;
        const char* right_side;
    } rows[] = {{3.7, "WWWW", "WWWW"},
                {3.3, "WWWR", "RWWW"},
                {3.0, "WWRR", "RRWW"},
                {2.7, "WRRR", "RRRW"},
                {2.3, "RRRR", "RRRR"}};
    for (const auto& row : rows) {
        CAPTURE(row.angle_deg);
        const Point3 eye = eye_at(m_from_nm(2.0), row.angle_deg);
        CHECK(picture(bar_at(3.0, LightSite::Side::left), eye) == row.left_side);
        CHECK(picture(bar_at(3.0, LightSite::Side::right), eye) == row.right_side);
    }
}

TEST_CASE(
    "lights: they stand left of the runway, the inner one 15 m from its edge, 9 m apart, abeam the aim "
    "point") {
    // Left: CS ADR-DSN.M.645(b)(1). 15 m and 9 m: UFC 3-535-01, 12-3. Aim point: CS ADR-DSN.L.540 Table L-1
    // note a.
    const LightSystem bar = bar_at(3.0);
    for (std::size_t i = 0; i < 4; ++i) {
        CHECK(bar.units[i].lens.x_m == plain_runway().aim_distance_m);
        CHECK(bar.units[i].lens.y_m == -(30.0 / 2.0 + 15.0 + 9.0 * static_cast<double>(i)));
        CHECK(bar.units[i].lens.z_m == 0.0);
    }
    CHECK(bar_at(3.0, LightSite::Side::right).units[0].lens.y_m == 30.0);
}

TEST_CASE("lights: they change at the heights that geometry gives from half a mile to four") {
    // Distance times the tangent of the setting, worked out apart and rounded to a foot. The tolerance of 1
    // ft holds that rounding and the units' places beside the runway (a quarter of a foot at half a mile).
    const struct {
        double distance_nm, heights_ft[4];  // of the changes at 3 deg 30', 3 deg 10', 2 deg 50', 2 deg 30'
    } rows[] = {{0.5, {186.0, 168.0, 150.0, 133.0}},
                {1.0, {372.0, 336.0, 301.0, 265.0}},
                {2.0, {743.0, 672.0, 601.0, 531.0}},
                {3.0, {1115.0, 1008.0, 902.0, 796.0}},
                {4.0, {1487.0, 1345.0, 1203.0, 1061.0}}};
    const LightSystem bar = bar_at(3.0);
    for (const auto& row : rows) {
        for (std::size_t i = 0; i < 4; ++i) {
            CAPTURE(row.distance_nm);
            CHECK_NEAR(height_of_change_ft(bar, static_cast<int>(i), m_from_nm(row.distance_nm)),
                       row.heights_ft[i], 1.0);
        }
    }
}

TEST_CASE("lights: a unit aside reads a little low, by the slant distance to it") {
    // An eye on 3 degrees over the centreline and a unit 150 ft aside: 2.9991 degrees at 1 NM, 2.967 at 1,000
    // ft, worked out apart; the tolerance is half of the last digit.
    LightUnit unit;
    unit.lens = {0.0, m_from_ft(-150.0), 0.0};
    const auto angle_deg = [&](double distance_m) {
        return deg_from_rad(
            unit_eye_angle_rad(unit, {-distance_m, 0.0, distance_m * exact::tan(rad_from_deg(3.0))}));
    };
    CHECK_NEAR(angle_deg(m_from_nm(1.0)), 2.9991, 0.00005);
    CHECK_NEAR(angle_deg(m_from_ft(1000.0)), 2.967, 0.0005);
}

TEST_CASE("lights: a unit changes colour within 3 minutes of arc") {
    // ICAO Annex 14 Volume I, 5.3.5, as given by an encyclopaedia.
    LightSystem one;
    one.units[0] = {{0.0, 0.0, 0.0}, rad_from_deg(3.0), papi_transition_rad};
    one.count = one.pattern = 1;
    const auto white_at = [&](double angle_deg) {
        return unit_white_fraction(one, 0, {-1000.0, 0.0, 1000.0 * exact::tan(rad_from_deg(angle_deg))});
    };
    const double half_deg = 1.5 / 60.0, hair_deg = 1e-6;
    CHECK(white_at(3.0 - half_deg - hair_deg) == 0.0);
    CHECK(white_at(3.0 + half_deg + hair_deg) == 1.0);
    CHECK_NEAR(white_at(3.0), 0.5, 1e-9);                    // at its setting it is half and half
    CHECK_NEAR(white_at(3.0 + half_deg / 2.0), 0.75, 1e-9);  // and the blend is straight
}

TEST_CASE(
    "lights: climbing through the beam never turns a white unit red, and the outermost turns white first") {
    // From 1 to 6 degrees in steps of a thousandth, far out and close in.
    const LightSystem bar = bar_at(3.0);
    for (const double distance_m : {400.0, 926.0, 1852.0, 9260.0}) {
        CAPTURE(distance_m);
        int falls = 0, out_of_order = 0, skipped = 0, before = 0;
        for (int step = 1000; step <= 6000; ++step) {
            const Point3 eye = eye_at(distance_m, step / 1000.0);
            const int white = white_count(bar, eye);
            falls += white < before;
            skipped += white > before + 1;
            before = white;
            for (int i = 0; i + 1 < bar.pattern; ++i)
                out_of_order += unit_white_fraction(bar, i, eye) > unit_white_fraction(bar, i + 1, eye);
        }
        CHECK(falls == 0);
        CHECK(skipped == 0);
        CHECK(out_of_order == 0);
        CHECK(before == 4);
    }
}
