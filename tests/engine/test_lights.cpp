// The lights' behaviour that no publication fixes.
#include "base/exact_math.h"
#include "base/units.h"
#include "tests/check.h"
#include "tests/fixtures.h"
#include "world/lights.h"

using namespace slopewise;
using namespace slopewise::test;

TEST_CASE("lights: half a degree low shows three red") {
    // Just inside: 2.5 degrees is where the outermost changes, so 0.45 low.
    const double distance_m = m_from_nm(2.0);
    const Point3 eye{300.0 - distance_m, 0.0, distance_m * exact::tan(rad_from_deg(2.55))};
    CHECK(white_count(make_lights(plain_runway()), eye) == 1);
}

TEST_CASE("lights: from abeam and beyond no unit faces the eye") {
    const LightSystem bar = make_lights(plain_runway());
    // The inner unit stands 30 m from the centreline, within 15 degrees of it from 112 m before it on.
    CHECK(unit_shows(bar, 0, {180.0, 0.0, 6.0}));
    CHECK(!unit_shows(bar, 0, {190.0, 0.0, 6.0}));
    CHECK(!unit_shows(bar, 0, {300.0, 0.0, 10.0}));
    CHECK(white_count(bar, {300.0, 0.0, 10.0}) == -1);
    CHECK(white_count(bar, {900.0, 0.0, 50.0}) == -1);
}

TEST_CASE("lights: an eye below the lenses sees all red, high above them all white") {
    const LightSystem bar = make_lights(plain_runway());
    CHECK(white_count(bar, {-1000.0, 0.0, -5.0}) == 0);
    CHECK(white_count(bar, {-1000.0, 0.0, 600.0}) == 4);
}

TEST_CASE("lights: on a sloping runway the lenses stand at the aim point's height") {
    Runway runway = plain_runway();
    runway.slope = 0.01;
    const LightSystem lights = make_lights(runway);
    for (int i = 0; i < lights.count; ++i)
        CHECK_NEAR(lights.units[static_cast<std::size_t>(i)].lens.z_m, 3.0, 1e-12);  // rounding
}

TEST_CASE("lights: gaps of the site are taken from the runway's own data") {
    Runway runway = plain_runway();
    runway.width_m = 23.0;
    runway.lights.edge_gap_m = 10.0;
    runway.lights.spacing_m = 6.0;
    const LightSystem bar = make_lights(runway);
    CHECK(bar.units[0].lens.y_m == -21.5);
    CHECK(bar.units[3].lens.y_m == -39.5);
}
