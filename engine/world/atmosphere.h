// The air: US Standard Atmosphere 1976 below 11 km, shifted by a temperature deviation and a QNH, and
// the airspeeds that follow from it.
#pragma once

namespace slopewise {

// Constants of the US Standard Atmosphere 1976.
namespace standard_air {
inline constexpr double temperature_k = 288.15;    // sea level
inline constexpr double pressure_pa = 101325.0;    // sea level
inline constexpr double lapse_k_per_m = 0.0065;    // below 11 km
inline constexpr double gas_constant = 287.05287;  // J/(kg K), dry air
inline constexpr double heat_ratio = 1.4;
inline constexpr double density_kgpm3 = pressure_pa / (gas_constant * temperature_k);
inline constexpr double pressure_exponent = 9.80665 / (gas_constant * lapse_k_per_m);  // 5.2559
}  // namespace standard_air

// What a weather report gives: how much warmer than standard, and the altimeter setting.
struct Weather {
    double temperature_deviation_k = 0.0;       // -50 to +50
    double qnh_pa = standard_air::pressure_pa;  // 90,000 to 110,000
};

struct Air {
    double temperature_k = standard_air::temperature_k;
    double pressure_pa = standard_air::pressure_pa;
    double density_kgpm3 = standard_air::density_kgpm3;
    double sound_mps = 340.294;
};

// A weather made ready for many altitudes.
struct AirColumn {
    double temperature_deviation_k = 0.0;
    double pressure_offset_m = 0.0;  // pressure altitude less height above mean sea level
};
AirColumn air_column(const Weather& weather);

// Pressure altitude (m) at which the standard atmosphere has this pressure (Pa, > 0).
double pressure_altitude_m(double pressure_pa);

// The standard atmosphere's temperature (K) and pressure (Pa) at an altitude (m, -1,000 to 11,000).
double standard_temperature_k(double altitude_m);
double standard_pressure_pa(double altitude_m);

// The air at a pressure altitude (m) with an outside temperature (K): ideal gas.
Air air_of(double pressure_altitude_m, double temperature_k);

// The air at a height above mean sea level (m) in this column. The altimeter's convention is used:
// the pressure altitude is the height plus the offset that the QNH gives at sea level.
Air air_at(const AirColumn& column, double altitude_m);

// rho / rho0 of the air.
double density_ratio(const Air& air);

// Altitude (m) at which the standard atmosphere has this density.
double density_altitude_m(const Air& air);

// True airspeed from calibrated airspeed and back (m/s, subsonic), by the compressible pitot equation
// (Anderson, Introduction to Flight, chapter 4).
double tas_from_cas_mps(double cas_mps, const Air& air);
double cas_from_tas_mps(double tas_mps, const Air& air);

}  // namespace slopewise
