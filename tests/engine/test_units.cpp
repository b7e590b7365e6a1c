// Conversion factors are definitions: international foot 0.3048 m, international nautical mile 1852 m (both
// from memory of the 1959 agreement and of the SI brochure).
#include "base/interpolate.h"
#include "base/units.h"
#include "tests/check.h"

using namespace slopewise;

TEST_CASE("units: a foot, a mile, a knot and a foot per minute are what they are defined to be") {
    CHECK(m_from_ft(1000.0) == 304.8);
    CHECK(m_from_nm(1.0) == 1852.0);
    CHECK_NEAR(mps_from_kt(1.0), 1852.0 / 3600.0, 1e-16);  // the last bit of a double
    CHECK_NEAR(mps_from_fpm(1000.0), 5.08, 1e-15);         // likewise
    CHECK_NEAR(rad_from_deg(180.0), pi, 1e-15);
    CHECK(kelvin_from_celsius(0.0) == 273.15);
}

TEST_CASE("units: a nautical mile is 6,076.115 ft and a knot is 101.27 ft/min") {
    CHECK_NEAR(ft_from_m(m_from_nm(1.0)), 6076.115, 0.0005);  // half of the last printed digit
    CHECK_NEAR(fpm_from_mps(mps_from_kt(1.0)), 101.27, 0.005);
}

TEST_CASE("units: every conversion has its inverse") {
    const double value = 123.456;
    const double rounding = 1e-13;  // two roundings of a double of this size
    CHECK_NEAR(ft_from_m(m_from_ft(value)), value, rounding);
    CHECK_NEAR(nm_from_m(m_from_nm(value)), value, rounding);
    CHECK_NEAR(kt_from_mps(mps_from_kt(value)), value, rounding);
    CHECK_NEAR(fpm_from_mps(mps_from_fpm(value)), value, rounding);
    CHECK_NEAR(deg_from_rad(rad_from_deg(value)), value, rounding);
    CHECK_NEAR(celsius_from_kelvin(kelvin_from_celsius(value)), value, rounding);
}

TEST_CASE("interpolation: blends and limits keep their ends") {
    CHECK(lerp(2.0, 6.0, 0.0) == 2.0);
    CHECK(lerp(2.0, 6.0, 0.25) == 3.0);
    CHECK(lerp(2.0, 6.0, 1.0) == 6.0);
    CHECK(clamp(-1.0, 0.0, 1.0) == 0.0);
    CHECK(clamp(0.5, 0.0, 1.0) == 0.5);
    CHECK(clamp(2.0, 0.0, 1.0) == 1.0);
    CHECK(smooth_step(-1.0, 0.0, 2.0) == 0.0);
    CHECK(smooth_step(1.0, 0.0, 2.0) == 0.5);
    CHECK(smooth_step(3.0, 0.0, 2.0) == 1.0);
    CHECK(smooth_step(0.001, 0.0, 1.0) < 0.001);  // it leaves its ends without a kink
}
