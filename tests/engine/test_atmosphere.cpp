#include <cmath>

#include "base/units.h"
#include "tests/check.h"
#include "world/atmosphere.h"

using namespace slopewise;

TEST_CASE("atmosphere: pressure altitude undoes standard pressure") {
    for (const double altitude_m : {-500.0, 0.0, 1234.5, 10000.0}) {
        CHECK_NEAR(pressure_altitude_m(standard_pressure_pa(altitude_m)), altitude_m, 1e-6);  // rounding
    }
}

TEST_CASE("atmosphere: in the standard atmosphere density altitude is the altitude") {
    for (const double altitude_m : {-500.0, 0.0, 1234.5, 10000.0}) {
        CHECK_NEAR(density_altitude_m(air_of(altitude_m, standard_temperature_k(altitude_m))), altitude_m,
                   1e-6);
    }
}

TEST_CASE("atmosphere: calibrated and true airspeed undo each other, and agree at sea level") {
    const Air sea_level = air_of(0.0, 288.15);
    const Air high = air_of(3000.0, 300.0);
    for (const double speed_mps : {0.0, 20.0, 33.4, 80.0, 200.0}) {
        CHECK_NEAR(tas_from_cas_mps(speed_mps, sea_level), speed_mps, 1e-6);  // rounding near rest
        CHECK_NEAR(cas_from_tas_mps(tas_from_cas_mps(speed_mps, high), high), speed_mps, 1e-6);
    }
    CHECK(tas_from_cas_mps(33.0, high) > 33.0);
}

TEST_CASE("atmosphere: a low altimeter setting thins the air, a warm day does too") {
    const Weather standard;
    Weather low = standard, warm = standard;
    low.qnh_pa = 98000.0;
    warm.temperature_deviation_k = 20.0;
    const double density = air_at(air_column(standard), 300.0).density_kgpm3;
    CHECK(air_at(air_column(low), 300.0).density_kgpm3 < density);
    CHECK(air_at(air_column(warm), 300.0).density_kgpm3 < density);
    CHECK_NEAR(air_at(air_column(warm), 300.0).temperature_k,
               air_at(air_column(standard), 300.0).temperature_k + 20.0, 1e-9);
    // Ideal gas at one pressure: density goes inversely with temperature.
    const double temperature = air_at(air_column(standard), 300.0).temperature_k;
    CHECK_NEAR(air_at(air_column(warm), 300.0).density_kgpm3, density * temperature / (temperature + 20.0),
               1e-12);
}

TEST_CASE("atmosphere: at the field's elevation an altimeter set to the QNH reads the elevation") {
    // The pressure there is the standard pressure at elevation plus the pressure altitude of the QNH.
    Weather weather;
    weather.qnh_pa = 100500.0;
    const double elevation_m = 200.0;
    const double pressure_altitude =
        pressure_altitude_m(air_at(air_column(weather), elevation_m).pressure_pa);
    CHECK_NEAR(pressure_altitude - pressure_altitude_m(weather.qnh_pa), elevation_m, 1e-6);
    CHECK_NEAR(air_at(air_column(weather), 0.0).pressure_pa, weather.qnh_pa, 1e-6);
}
