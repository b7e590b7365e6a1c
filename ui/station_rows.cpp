#include "ui/station_rows.h"

#include "base/units.h"
#include "station/headwind_table.h"
#include "ui/format.h"

namespace slopewise {
namespace {

using Words = std::string_view;

constexpr std::array<Words, 3> paths{"High", "On it", "Low"};
constexpr std::array<Words, 3> speeds{"Fast", "On speed", "Slow"};
constexpr std::array<Words, 2> again{"Where it began", "Other side"};
constexpr std::array<Words, 4> hands{"Both", "Power", "Pitch", "Nothing"};
constexpr std::array<Words, 11> shows{"No",           "Well",          "Late power",  "Over-controls",
                                      "Needle",       "Stretches",     "Ducks under", "Late flap",
                                      "Lamps chased", "Wind unminded", "Presses on"};
constexpr std::array<Words, 3> gusts{"Off", "Some", "Strong"};
constexpr std::array<Words, 2> beside{"Hidden", "Shown"};
constexpr std::array<Words, 4> lights_of_day{"Day", "Low sun", "Dusk", "Night"};
constexpr std::array<Words, 2> ground_lights{"Lit", "Dark"};
constexpr std::array<Words, 3> skies{"Clear", "Overcast", "Rain"};
constexpr std::array<Words, 2> drawn{"On", "Off"};
constexpr std::array<Words, 2> lenses{"Clear", "Misted"};
constexpr std::array<Words, 3> airspeeds{"Works", "Blank", "Stuck"};
constexpr std::array<Words, 2> flap_failures{"Works", "Stuck"};
constexpr std::array<Words, 3> powers{"All", "Half", "None"};
constexpr std::array<Words, 1> restore{"Everything works again"};

constexpr StationRowWords of(Words label, StationRow row, std::span<const Words> choices = {}) {
    return {label, row, StationWish::again, choices};
}
constexpr StationRowWords of(Words label, StationWish wish, std::span<const Words> choices) {
    return {label, std::nullopt, wish, choices};
}

constexpr std::array<StationRowWords, 5> places{
    of("Distance, NM", StationRow::distance), of("Path", StationRow::path, paths),
    of("Speed", StationRow::speed, speeds), of("Flap set", StationRow::flap),
    of("Again", StationWish::again, again)};
constexpr std::array<StationRowWords, 3> air{of("Headwind, kt", StationRow::headwind),
                                             of("Gusts", StationRow::gusts, gusts),
                                             of("In calm air too", StationWish::calm_beside, beside)};
constexpr std::array<StationRowWords, 2> who{of("At the keys", StationWish::who_has, hands),
                                             of("Show how", StationWish::demonstrate, shows)};
constexpr std::array<StationRowWords, 4> slope_lights{
    of("Lights", StationWish::lights, drawn), of("Unit out", StationRow::unit_out),
    of("Unit too high", StationRow::unit_misaimed), of("Lenses", StationRow::lenses, lenses)};
constexpr std::array<StationRowWords, 4> failures{
    of("Airspeed", StationRow::airspeed, airspeeds), of("Flap", StationRow::flap_failure, flap_failures),
    of("Power left", StationRow::power, powers), of("Restore", StationWish::restore, restore)};
constexpr std::array<StationRowWords, 4> weather{
    of("Light", StationRow::light, lights_of_day),
    of("Ground lights", StationRow::ground_lights, ground_lights),
    of("Visibility, km", StationRow::visibility), of("Sky", StationRow::sky, skies)};

constexpr std::array<StationGroupWords, 6> groups{{{"Put it there", places},
                                                   {"Wind", air},
                                                   {"Who flies", who},
                                                   {"Slope lights", slope_lights},
                                                   {"What fails", failures},
                                                   {"Light and weather", weather}}};

template <std::size_t Count>
std::vector<std::string> numbers(const std::array<double, Count>& values, double unit, int most_decimals) {
    std::vector<std::string> words;
    for (const double value : values) {
        const double shown = value / unit;
        const bool whole = shown == static_cast<double>(static_cast<int>(shown));
        words.push_back(number_words(shown, whole ? 0 : most_decimals));
    }
    return words;
}

// "None", "1" to the number of units, "All".
std::vector<std::string> units(int count, bool all) {
    std::vector<std::string> words{"None"};
    for (int unit = 1; unit <= count; ++unit) words.push_back(std::to_string(unit));
    if (all) words.emplace_back("All");
    return words;
}

}  // namespace

std::span<const StationGroupWords> station_groups() { return groups; }

std::vector<std::string> station_choices(const StationRowWords& row, const Scenario& scenario) {
    if (!row.choices.empty()) return {row.choices.begin(), row.choices.end()};
    const int pattern = scenario.lights.pattern;
    std::vector<std::string> words;
    switch (*row.row) {
    case StationRow::distance: return numbers(station_distances_nm, 1.0, 1);
    case StationRow::headwind: return numbers(headwinds_kt, 1.0, 0);
    case StationRow::visibility: return numbers(station_visibilities_m, 1000.0, 1);
    case StationRow::unit_out: return units(pattern, true);
    case StationRow::unit_misaimed: return units(pattern, false);
    default:
        for (int i = 0; i < scenario.aircraft.flap_count; ++i)
            words.push_back(scenario.aircraft.flaps[static_cast<std::size_t>(i)].name);
    }
    return words;
}

}  // namespace slopewise
