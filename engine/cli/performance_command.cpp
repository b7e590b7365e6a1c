#include "base/units.h"
#include "cli/commands.h"
#include "cli/data_files.h"
#include "cli/format.h"
#include "cli/json_text.h"
#include "flight/performance.h"

namespace slopewise::cli {
namespace {

constexpr Option options[] = {
    {"--mass-kg", "M", "within the aircraft's range; as its file has it if not given"},
    {"--pressure-altitude-ft", "H", "-1000 to 10000; 0 if not given"},
    {"--warmer-c", "T", "than standard, -40 to 40; 0 if not given"},
    {"--json", "", "answer in JSON"},
};

// An aircraft that is shipped, by its id, or one in a file.
Result<Aircraft> find_aircraft_file(const std::string& id_or_path) {
    if (const Aircraft* shipped = find_aircraft(shipped_catalog(), id_or_path)) return success(*shipped);
    Result<std::string> text = read_file(id_or_path);
    if (!text.ok()) {
        text.problems[0].allowed = "an aircraft file";
        for (const Aircraft& aircraft : shipped_catalog().aircraft)
            text.problems[0].allowed += ", \"" + aircraft.id + "\"";
        return failure<Aircraft>(std::move(text.problems));
    }
    Result<DataEntry> entry = read_entry({id_or_path, *text.value});
    if (!entry.ok()) return failure<Aircraft>(std::move(entry.problems));
    if (Aircraft* aircraft = std::get_if<Aircraft>(&*entry.value)) return success(std::move(*aircraft));
    return failure<Aircraft>({{id_or_path, 0, "/kind", "is not an aircraft", "\"aircraft\""}});
}

std::string json_answer(const Aircraft& aircraft, const Performance& sheet) {
    Json json{{"aircraft", aircraft.id},
              {"name", aircraft.name},
              {"mass_kg", aircraft.mass_kg},
              {"vs0_kt", kt_from_mps(sheet.vs0_mps)},
              {"vs1_kt", kt_from_mps(sheet.vs1_mps)},
              {"best_glide_kt", kt_from_mps(sheet.best_glide_cas_mps)},
              {"best_glide_deg", deg_from_rad(sheet.best_glide_rad)},
              {"landing_flap_idle_glide_deg", deg_from_rad(sheet.landing_glide_rad)},
              {"least_power_kt", kt_from_mps(sheet.least_power_cas_mps)},
              {"maximum_climb_fpm", fpm_from_mps(sheet.climb_mps)},
              {"maximum_climb_kt", kt_from_mps(sheet.climb_cas_mps)},
              {"go_around_landing_flap_climb_fpm", fpm_from_mps(sheet.go_around_climb_mps)}};
    const TrimState& approach = sheet.approach;
    json["approach_3_deg"] = {{"flyable", approach.flyable},
                              {"speed_kt", kt_from_mps(aircraft.approach_speed_mps)},
                              {"power_percent", 100.0 * approach.power},
                              {"lever_percent", 100.0 * approach.controls.throttle},
                              {"pitch_deg", deg_from_rad(approach.pitch_rad)},
                              {"sink_fpm", fpm_from_mps(approach.sink_mps)}};
    json["level_flight"] = Json::array();
    for (const LevelPoint& point : sheet.level)
        json["level_flight"].push_back({{"speed_kt", kt_from_mps(point.cas_mps)},
                                        {"power_percent", 100.0 * point.power},
                                        {"pitch_deg", deg_from_rad(point.pitch_rad)}});
    return json_text(json);
}

std::string text_answer(const Aircraft& aircraft, const Performance& sheet) {
    std::string text = format("%s, %.0f kg\n", aircraft.name.c_str(), aircraft.mass_kg);
    text += row("stall, landing flap (Vs0)", format("%.0f kt", kt_from_mps(sheet.vs0_mps)));
    text += row("stall, flap up (Vs1)", format("%.0f kt", kt_from_mps(sheet.vs1_mps)));
    text += row("best glide, flap up", format("%.0f kt, %.1f deg down", kt_from_mps(sheet.best_glide_cas_mps),
                                              deg_from_rad(sheet.best_glide_rad)));
    text += row("idle glide, landing flap", format("%.1f deg down", deg_from_rad(sheet.landing_glide_rad)));
    text += row("least power, level", format("at %.0f kt", kt_from_mps(sheet.least_power_cas_mps)));
    text += row("maximum climb", format("%.0f ft/min at %.0f kt", fpm_from_mps(sheet.climb_mps),
                                        kt_from_mps(sheet.climb_cas_mps)));
    text += row("go-around, landing flap",
                format("%.0f ft/min at %.0f kt", fpm_from_mps(sheet.go_around_climb_mps),
                       kt_from_mps(aircraft.approach_speed_mps)));
    text += row("3 deg approach",
                format("%.0f kt, %.0f %% power, lever at %.0f %%, pitch %+.1f deg, sink %.0f ft/min",
                       kt_from_mps(aircraft.approach_speed_mps), 100.0 * sheet.approach.power,
                       100.0 * sheet.approach.controls.throttle, deg_from_rad(sheet.approach.pitch_rad),
                       fpm_from_mps(sheet.approach.sink_mps)));
    text += "\n  level flight, flap up\n";
    for (const LevelPoint& point : sheet.level)
        text += format("  %5.0f kt  %4.0f %% power  pitch %+5.1f deg\n", kt_from_mps(point.cas_mps),
                       100.0 * point.power, deg_from_rad(point.pitch_rad));
    return text + "\nComputed from the file for ground study. The flight manual is what counts.\n";
}

Outcome performance(const Arguments& arguments) {
    Result<Aircraft> aircraft = find_aircraft_file(arguments.words[0]);
    if (!aircraft.ok()) return {bad_input, "", problem_lines(aircraft.problems)};
    Numbers numbers(arguments);
    Aircraft& flown = *aircraft.value;
    flown.mass_kg = numbers.number("--mass-kg", flown.mass_kg, flown.least_mass_kg, flown.most_mass_kg);
    const double altitude_m = m_from_ft(numbers.number("--pressure-altitude-ft", 0.0, -1000.0, 10000.0));
    Weather weather;
    weather.temperature_deviation_k = numbers.number("--warmer-c", 0.0, -40.0, 40.0);
    if (!numbers.problem().empty()) return complaint(bad_input, "performance", numbers.problem());

    Surroundings surroundings;
    surroundings.air = air_column(weather);
    surroundings.runway.length_m = 1500.0;
    surroundings.runway.elevation_m = altitude_m;
    const Performance sheet = performance_of(flown, surroundings);
    return {good, arguments.has("--json") ? json_answer(flown, sheet) : text_answer(flown, sheet), ""};
}

}  // namespace

const Command& performance_command() {
    static const Command command{
        {"performance", "AIRCRAFT", 1, 1, "An aircraft's performance sheet, computed from its file.",
         "AIRCRAFT is the id of a shipped aircraft or an aircraft file (JSON). A file is checked against "
         "itself\n"
         "first: stall speeds against mass and greatest lift, approach speed against 1.2 Vs0, a 3-degree\n"
         "approach between idle and full power. Airspeeds are calibrated; the air is calm.",
         options},
        performance};
    return command;
}

}  // namespace slopewise::cli
