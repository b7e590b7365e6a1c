// The air and the airspeeds against printed tables and worked examples.
#include <cmath>

#include "base/units.h"
#include "tests/check.h"
#include "world/atmosphere.h"

using namespace slopewise;

namespace {

constexpr double earth_radius_m = 6356766.0;  // of the US Standard Atmosphere 1976
constexpr double pa_per_psf = 47.880259;      // pound-force a square foot
constexpr double kgpm3_per_slug = 515.37882;  // slug a cubic foot

// The tables below are by geometric altitude; the equations go by geopotential.
double geopotential_m(double geometric_m) {
    return earth_radius_m * geometric_m / (earth_radius_m + geometric_m);
}

Air standard_air_at(double geometric_m) {
    const double altitude_m = geopotential_m(geometric_m);
    return air_of(altitude_m, standard_temperature_k(altitude_m));
}

}  // namespace

TEST_CASE("atmosphere: it is the US Standard Atmosphere 1976 by the printed rows from 0 to 10,000 ft") {
    // R. Carmichael, Public Domain Aeronautical Software, table of the 1976 atmosphere in US units.
    // Tolerances are half of the last printed digit, and a little for the digits of the unit factors.
    const struct {
        double altitude_ft, temperature_r, pressure_psf, density_slug, density_ratio, pressure_ratio,
            sound_fps;
    } rows[] = {
        {0.0, 518.7, 2116.2, 0.0023769, 1.0000, 1.0000, 1116.5},
        {1000.0, 515.1, 2040.9, 0.0023081, 0.9711, 0.9644, 1112.6},
        {2000.0, 511.5, 1967.7, 0.0022409, 0.9428, 0.9298, 1108.7},
        {3000.0, 508.0, 1896.7, 0.0021752, 0.9151, 0.8963, 1104.9},
        {5000.0, 500.8, 1760.9, 0.0020482, 0.8617, 0.8321, 1097.1},
        {8000.0, 490.2, 1572.1, 0.0018685, 0.7861, 0.7429, 1085.3},
        {10000.0, 483.0, 1455.6, 0.0017555, 0.7386, 0.6878, 1077.4},
    };
    for (const auto& row : rows) {
        CAPTURE(row.altitude_ft);
        const Air air = standard_air_at(m_from_ft(row.altitude_ft));
        CHECK_NEAR(air.temperature_k * 1.8, row.temperature_r, 0.051);
        CHECK_NEAR(air.pressure_pa / pa_per_psf, row.pressure_psf, 0.051);
        CHECK_NEAR(air.density_kgpm3 / kgpm3_per_slug, row.density_slug, 0.51e-7);
        CHECK_NEAR(density_ratio(air), row.density_ratio, 0.51e-4);
        CHECK_NEAR(air.pressure_pa / standard_air::pressure_pa, row.pressure_ratio, 0.51e-4);
        CHECK_NEAR(ft_from_m(air.sound_mps), row.sound_fps, 0.051);
    }
}

TEST_CASE("atmosphere: it is the standard one by the printed metric rows too") {
    // Mechanical Engineers' Handbook, volume 4, Table 6. The last digits of that table are within two of
    // ours.
    const struct {
        double altitude_m, temperature_k, pressure_bar, density_kgpm3, sound_mps;
    } rows[] = {{1000.0, 281.65, 0.8988, 1.1117, 336.4},
                {2000.0, 275.15, 0.7950, 1.0066, 332.5},
                {3000.0, 268.66, 0.7012, 0.9093, 328.6}};
    for (const auto& row : rows) {
        CAPTURE(row.altitude_m);
        const Air air = standard_air_at(row.altitude_m);
        CHECK_NEAR(air.temperature_k, row.temperature_k, 0.02);
        CHECK_NEAR(air.pressure_pa / 1e5, row.pressure_bar, 0.0002);
        CHECK_NEAR(air.density_kgpm3, row.density_kgpm3, 0.0002);
        CHECK_NEAR(air.sound_mps, row.sound_mps, 0.1);
    }
}

TEST_CASE("atmosphere: density altitude on hot days is what the standard formula gives") {
    // Worked out apart by the 1976 formula (dry air), to a foot.
    const struct {
        double pressure_altitude_ft, oat_c, density_altitude_ft;
    } rows[] = {{0.0, 15.0, 0.0}, {0.0, 30.0, 1724.0}, {2000.0, 35.0, 4703.0}, {5000.0, 30.0, 7801.0}};
    for (const auto& row : rows) {
        const Air air = air_of(m_from_ft(row.pressure_altitude_ft), kelvin_from_celsius(row.oat_c));
        CHECK_NEAR(ft_from_m(density_altitude_m(air)), row.density_altitude_ft, 1.0);
    }
}

TEST_CASE("atmosphere: true airspeed grows with density altitude by the low-speed formula") {
    // TAS = CAS / (1 - 6.8755856e-6 DA)^2.127940, from a published formulary: 1.0299 at 2,000 ft, 1.0773 at
    // 5,000, 1.1637 at 10,000. It leaves compressibility out, which at 65 kt is below one part in a thousand.
    const struct {
        double altitude_ft, factor;
    } rows[] = {{2000.0, 1.0299}, {5000.0, 1.0773}, {10000.0, 1.1637}};
    for (const auto& row : rows) {
        const double altitude_m = m_from_ft(row.altitude_ft);
        const Air air = air_of(altitude_m, standard_temperature_k(altitude_m));
        const double formula = 1.0 / std::pow(1.0 - 6.8755856e-6 * row.altitude_ft, 2.127940);
        CHECK_NEAR(formula, row.factor, 0.00005);
        CHECK_NEAR(1.0 / std::sqrt(density_ratio(air)), row.factor, 0.00006);  // equivalent airspeed: exact
        CHECK_NEAR(tas_from_cas_mps(33.0, air) / 33.0, row.factor, 0.001);
    }
}

TEST_CASE("atmosphere: 65 knots equivalent are 66.0, 66.9, 70.0 and 75.6 knots true") {
    // At 1,000, 2,000, 5,000 and 10,000 ft, worked out apart to a tenth; calibrated and equivalent airspeed
    // differ by less than 0.02 kt at this speed.
    const struct {
        double altitude_ft, tas_kt;
    } rows[] = {{1000.0, 66.0}, {2000.0, 66.9}, {5000.0, 70.0}, {10000.0, 75.6}};
    for (const auto& row : rows) {
        const double altitude_m = m_from_ft(row.altitude_ft);
        const Air air = air_of(altitude_m, standard_temperature_k(altitude_m));
        CHECK_NEAR(kt_from_mps(tas_from_cas_mps(mps_from_kt(65.0), air)), row.tas_kt, 0.07);
    }
}

TEST_CASE("atmosphere: the compressible pitot equation solves the textbook's example") {
    // Anderson, Introduction to Flight, Example 4.17: total pressure 42,400 Pa, static 26,500 Pa, 230 K. By
    // the example's equations Mach 0.848, true 257.7 m/s, calibrated 157.2 m/s. Half a percent allows for the
    // book's rounded constants.
    const Air air = air_of(pressure_altitude_m(26500.0), 230.0);
    CHECK_NEAR(air.pressure_pa, 26500.0, 0.01);  // rounding of the inverse
    const double impact_pa = 42400.0 - 26500.0;
    const double cas_mps = 340.294 * std::sqrt(5.0 * (std::pow(impact_pa / 101325.0 + 1.0, 2.0 / 7.0) - 1.0));
    CHECK_NEAR(cas_mps, 157.2, 0.8);
    CHECK_NEAR(tas_from_cas_mps(cas_mps, air), 257.7, 1.3);
    CHECK_NEAR(tas_from_cas_mps(cas_mps, air) / air.sound_mps, 0.848, 0.004);
    CHECK_NEAR(cas_from_tas_mps(257.7, air), 157.2, 0.8);
}
