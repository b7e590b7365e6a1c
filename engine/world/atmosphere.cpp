#include "world/atmosphere.h"

#include <cmath>

#include "base/exact_math.h"

namespace slopewise {
namespace {

constexpr double sound_0_mps2 =
    standard_air::heat_ratio * standard_air::gas_constant * standard_air::temperature_k;

// Impact pressure over static pressure at a Mach number squared, and the inverse.
double impact_ratio(double mach_squared) { return exact::pow(1.0 + 0.2 * mach_squared, 3.5) - 1.0; }
double mach_squared(double impact_ratio) { return 5.0 * (exact::pow(impact_ratio + 1.0, 2.0 / 7.0) - 1.0); }

}  // namespace

double standard_temperature_k(double altitude_m) {
    return standard_air::temperature_k - standard_air::lapse_k_per_m * altitude_m;
}

double standard_pressure_pa(double altitude_m) {
    const double ratio = 1.0 - standard_air::lapse_k_per_m / standard_air::temperature_k * altitude_m;
    return standard_air::pressure_pa * exact::pow(ratio, standard_air::pressure_exponent);
}

double pressure_altitude_m(double pressure_pa) {
    const double ratio =
        exact::pow(pressure_pa / standard_air::pressure_pa, 1.0 / standard_air::pressure_exponent);
    return standard_air::temperature_k / standard_air::lapse_k_per_m * (1.0 - ratio);
}

Air air_of(double pressure_altitude_m, double temperature_k) {
    Air air;
    air.temperature_k = temperature_k;
    air.pressure_pa = standard_pressure_pa(pressure_altitude_m);
    air.density_kgpm3 = air.pressure_pa / (standard_air::gas_constant * temperature_k);
    air.sound_mps = std::sqrt(standard_air::heat_ratio * standard_air::gas_constant * temperature_k);
    return air;
}

AirColumn air_column(const Weather& weather) {
    return {weather.temperature_deviation_k, pressure_altitude_m(weather.qnh_pa)};
}

Air air_at(const AirColumn& column, double altitude_m) {
    const double pressure_altitude = altitude_m + column.pressure_offset_m;
    return air_of(pressure_altitude,
                  standard_temperature_k(pressure_altitude) + column.temperature_deviation_k);
}

double density_ratio(const Air& air) { return air.density_kgpm3 / standard_air::density_kgpm3; }

double density_altitude_m(const Air& air) {
    const double ratio = exact::pow(density_ratio(air), 1.0 / (standard_air::pressure_exponent - 1.0));
    return standard_air::temperature_k / standard_air::lapse_k_per_m * (1.0 - ratio);
}

double tas_from_cas_mps(double cas_mps, const Air& air) {
    const double impact_pa = standard_air::pressure_pa * impact_ratio(cas_mps * cas_mps / sound_0_mps2);
    return air.sound_mps * std::sqrt(mach_squared(impact_pa / air.pressure_pa));
}

double cas_from_tas_mps(double tas_mps, const Air& air) {
    const double mach = tas_mps / air.sound_mps;
    const double impact_pa = air.pressure_pa * impact_ratio(mach * mach);
    return std::sqrt(sound_0_mps2 * mach_squared(impact_pa / standard_air::pressure_pa));
}

}  // namespace slopewise
