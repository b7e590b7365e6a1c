#include "tests/check.h"
#include "tests/fixtures.h"
#include "world/runway.h"

using namespace slopewise;
using namespace slopewise::test;

TEST_CASE("runway: the aiming point by landing distance is that of CS ADR-DSN.L.540, Table L-1") {
    // Distance from the threshold to the beginning of the marking; the table's ranges for the rest.
    const struct {
        double landing_distance_m, distance_m, least_length_m, most_length_m, least_width_m, most_width_m,
            least_gap_m, most_gap_m;
    } rows[] = {
        {600.0, 150.0, 30.0, 45.0, 4.0, 4.0, 6.0, 6.0},
        {799.9, 150.0, 30.0, 45.0, 4.0, 4.0, 6.0, 6.0},
        {800.0, 250.0, 30.0, 45.0, 6.0, 6.0, 9.0, 9.0},
        {1199.9, 250.0, 30.0, 45.0, 6.0, 6.0, 9.0, 9.0},
        {1200.0, 300.0, 45.0, 60.0, 6.0, 10.0, 18.0, 22.5},
        {2399.9, 300.0, 45.0, 60.0, 6.0, 10.0, 18.0, 22.5},
        {2400.0, 400.0, 45.0, 60.0, 6.0, 10.0, 18.0, 22.5},
        {4000.0, 400.0, 45.0, 60.0, 6.0, 10.0, 18.0, 22.5},
    };
    for (const auto& row : rows) {
        const AimingPointMarking marking = aiming_point_marking(row.landing_distance_m);
        CAPTURE(row.landing_distance_m);
        CHECK(marking.distance_m == row.distance_m);
        CHECK(marking.length_m >= row.least_length_m);
        CHECK(marking.length_m <= row.most_length_m);
        CHECK(marking.width_m >= row.least_width_m);
        CHECK(marking.width_m <= row.most_width_m);
        CHECK(marking.inner_gap_m >= row.least_gap_m);
        CHECK(marking.inner_gap_m <= row.most_gap_m);
    }
}

TEST_CASE("runway: the ground is level before it, slopes along it and is level beyond it") {
    Runway runway = plain_runway();
    runway.slope = 0.01;
    CHECK(ground_height_m(runway, -500.0) == 0.0);
    CHECK(ground_height_m(runway, 0.0) == 0.0);
    CHECK_NEAR(ground_height_m(runway, 300.0), 3.0, 1e-12);  // rounding
    CHECK_NEAR(ground_height_m(runway, 1500.0), 15.0, 1e-12);
    CHECK_NEAR(ground_height_m(runway, 9000.0), 15.0, 1e-12);
}

TEST_CASE("runway: the aim point lies on the centreline, on the surface, where the marking begins") {
    Runway runway = plain_runway();
    runway.slope = -0.02;
    const Point3 aim = aim_point(runway);
    CHECK(aim.x_m == 300.0);
    CHECK(aim.y_m == 0.0);
    CHECK_NEAR(aim.z_m, -6.0, 1e-12);  // rounding
}
