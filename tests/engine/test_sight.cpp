#include "base/exact_math.h"
#include "base/units.h"
#include "tests/check.h"
#include "tests/fixtures.h"
#include "world/sight.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

Point3 eye_at(const Runway& runway, double distance_m, double elevation_deg) {
    const Point3 aim = aim_point(runway);
    return {aim.x_m - distance_m, 0.0, aim.z_m + distance_m * exact::tan(rad_from_deg(elevation_deg))};
}

}  // namespace

TEST_CASE("sight: an eye on the path deviates by nothing at any distance") {
    const Runway runway = plain_runway();
    for (const double distance_nm : {0.1, 0.5, 1.0, 3.0, 10.0}) {
        const PathDeviation off = path_deviation(runway, eye_at(runway, m_from_nm(distance_nm), 3.0));
        CHECK_NEAR(deg_from_rad(off.angle_rad), 0.0, 1e-12);  // rounding
        CHECK_NEAR(off.offset_m, 0.0, 1e-9);                  // rounding of heights up to 1,000 m
        CHECK_NEAR(nm_from_m(off.distance_m), distance_nm, 1e-12);
    }
}

TEST_CASE("sight: high is positive, low is negative, in degrees and in feet at that distance") {
    const Runway runway = plain_runway();
    const PathDeviation high = path_deviation(runway, eye_at(runway, m_from_nm(1.0), 3.5));
    CHECK_NEAR(deg_from_rad(high.angle_rad), 0.5, 1e-12);
    // 371.6 - 318.4 ft a nautical mile: 6,076.115 (tan 3.5 - tan 3), worked out apart; a tenth of a foot is
    // its last digit
    CHECK_NEAR(ft_from_m(high.offset_m), 53.2, 0.05);
    const PathDeviation low = path_deviation(runway, eye_at(runway, m_from_nm(1.0), 2.5));
    CHECK_NEAR(deg_from_rad(low.angle_rad), -0.5, 1e-12);
    CHECK_NEAR(ft_from_m(low.offset_m), -53.2, 0.1);  // 265.3 - 318.4: two rounded figures
}

TEST_CASE("sight: on a sloping runway the path still starts from the aim point's own height") {
    Runway runway = plain_runway();
    runway.slope = 0.02;
    const PathDeviation off = path_deviation(runway, eye_at(runway, 2000.0, 3.0));
    CHECK_NEAR(off.offset_m, 0.0, 1e-9);
    CHECK_NEAR(off.height_m, 2000.0 * exact::tan(rad_from_deg(3.0)), 1e-9);
}

TEST_CASE("sight: beyond the aim point the distance is negative and the eye above it is high") {
    const Runway runway = plain_runway();
    const PathDeviation off = path_deviation(runway, {400.0, 0.0, 5.0});
    CHECK(off.distance_m == -100.0);
    CHECK(off.offset_m > 5.0);
    CHECK(off.angle_rad > 0.0);
}
