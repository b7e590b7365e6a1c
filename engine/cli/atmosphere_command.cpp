#include "base/units.h"
#include "cli/commands.h"
#include "cli/format.h"
#include "cli/json_text.h"
#include "world/atmosphere.h"

namespace slopewise::cli {
namespace {

constexpr Option options[] = {
    {"--pressure-altitude-ft", "H", "-3000 to 36000", true},
    {"--oat-c", "T", "outside air temperature, -80 to 60", true},
    {"--cas-kt", "V", "calibrated airspeed, 0 to 300, to be told the true one"},
    {"--json", "", "answer in JSON"},
};

Outcome atmosphere(const Arguments& arguments) {
    Numbers numbers(arguments);
    const double altitude_ft = numbers.number("--pressure-altitude-ft", 0.0, -3000.0, 36000.0);
    const double oat_c = numbers.number("--oat-c", 0.0, -80.0, 60.0);
    const double cas_kt = numbers.number("--cas-kt", 0.0, 0.0, 300.0);
    if (!numbers.problem().empty()) return complaint(bad_input, "atmosphere", numbers.problem());

    const Air air = air_of(m_from_ft(altitude_ft), kelvin_from_celsius(oat_c));
    const double density_altitude_ft = ft_from_m(density_altitude_m(air));
    const double tas_kt = kt_from_mps(tas_from_cas_mps(mps_from_kt(cas_kt), air));
    const bool with_speed = arguments.has("--cas-kt");
    if (arguments.has("--json")) {
        Json json{{"pressure_altitude_ft", altitude_ft},     {"oat_c", oat_c},
                  {"pressure_hpa", air.pressure_pa / 100.0}, {"density_kgpm3", air.density_kgpm3},
                  {"density_ratio", density_ratio(air)},     {"density_altitude_ft", density_altitude_ft}};
        if (with_speed) {
            json["cas_kt"] = cas_kt;
            json["tas_kt"] = tas_kt;
        }
        return {good, json_text(json), ""};
    }
    std::string text = row("pressure", format("%.1f hPa", air.pressure_pa / 100.0)) +
                       row("density", format("%.4f kg/m3", air.density_kgpm3)) +
                       row("density ratio", format("%.4f of standard at sea level", density_ratio(air))) +
                       row("density altitude", format("%.0f ft", density_altitude_ft));
    if (with_speed) text += row("true airspeed", format("%.1f kt at %g kt calibrated", tas_kt, cas_kt));
    return {good, text, ""};
}

}  // namespace

const Command& atmosphere_command() {
    static const Command command{
        {"atmosphere", "", 0, 0,
         "Density, density altitude and true airspeed at a pressure altitude and temperature.",
         "US Standard Atmosphere 1976 below 11 km; airspeeds by the compressible pitot equation.", options},
        atmosphere};
    return command;
}

}  // namespace slopewise::cli
