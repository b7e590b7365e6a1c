#include "base/units.h"
#include "tests/check.h"
#include "world/visibility.h"
#include "world/wind.h"

using namespace slopewise;

TEST_CASE("wind: a steady wind is the same at every height") {
    Wind wind;
    wind.headwind_mps = 7.5;
    for (const double height_m : {-5.0, 0.0, 10.0, 3000.0}) CHECK(headwind_at_mps(wind, height_m) == 7.5);
}

TEST_CASE(
    "wind: the logarithmic profile is the station's wind at its height, and none at the roughness length") {
    Wind wind;
    wind.kind = Wind::Kind::logarithmic;
    wind.headwind_mps = 8.0;
    CHECK(headwind_at_mps(wind, 10.0) == 8.0);
    CHECK(headwind_at_mps(wind, 0.03) == 0.0);
    CHECK(headwind_at_mps(wind, 0.01) == 0.0);
    CHECK(headwind_at_mps(wind, -3.0) == 0.0);
    CHECK(headwind_at_mps(wind, 20.0) > 8.0);
}

TEST_CASE("wind: the logarithmic profile has the factors of the military low-altitude wind shear") {
    // MIL-F-8785C: u = W20 ln(h/z0) / ln(20 ft/z0) with z0 = 0.15 ft for approach and landing. Formula and
    // roughness from memory; the factors follow from them and are printed to three decimals.
    Wind wind;
    wind.kind = Wind::Kind::logarithmic;
    wind.headwind_mps = 1.0;
    wind.reference_height_m = m_from_ft(20.0);
    wind.roughness_m = m_from_ft(0.15);
    const struct {
        double height_ft, factor;
    } rows[] = {{10.0, 0.858}, {20.0, 1.0}, {50.0, 1.187}, {100.0, 1.329}, {500.0, 1.658}};
    for (const auto& row : rows)
        CHECK_NEAR(headwind_at_mps(wind, m_from_ft(row.height_ft)), row.factor, 0.0005);
}

TEST_CASE("wind: a table is straight between its rows and constant beyond them") {
    Wind wind;
    wind.kind = Wind::Kind::table;
    wind.table = {{{10.0, 4.0}, {110.0, 9.0}, {210.0, 7.0}}};
    wind.table_size = 3;
    CHECK(headwind_at_mps(wind, -1.0) == 4.0);
    CHECK(headwind_at_mps(wind, 10.0) == 4.0);
    CHECK_NEAR(headwind_at_mps(wind, 60.0), 6.5, 1e-12);  // rounding
    CHECK_NEAR(headwind_at_mps(wind, 110.0), 9.0, 1e-12);
    CHECK_NEAR(headwind_at_mps(wind, 160.0), 8.0, 1e-12);
    CHECK(headwind_at_mps(wind, 5000.0) == 7.0);
}

TEST_CASE("wind: a table without rows is calm, and one cannot see through less than no air") {
    Wind wind;
    wind.kind = Wind::Kind::table;
    CHECK(headwind_at_mps(wind, 100.0) == 0.0);
    CHECK(contrast_left(-1.0, 0.001) == 1.0);
}
