#include <algorithm>

#include "base/units.h"
#include "cli/commands.h"
#include "cli/format.h"
#include "cli/json_text.h"
#include "review/words.h"
#include "world/lights.h"
#include "world/visibility.h"

namespace slopewise::cli {
namespace {

constexpr Option options[] = {
    {"--distance-nm", "D", "along the ground from the aim point to the eye, 0.01 to 20", true},
    {"--eye-ft", "H", "height of the eye above the aim point, 0 to 20000", true},
    {"--nominal-deg", "A", "nominal path of the lights, 2.5 to 4.5; 3 if not given"},
    {"--kind", "KIND", "papi, papi_harmonised, apapi or vasi; papi if not given"},
    {"--side", "SIDE", "left, right or both; left if not given"},
    {"--out", "N", "unit N is dark"},
    {"--misaimed", "N", "unit N is set wrong, by what --too-high-minutes says"},
    {"--too-high-minutes", "M", "minutes of arc, -60 to 60"},
    {"--condensation-percent", "C", "on the lenses: red fails to a pale mixture, 0 to 100"},
    {"--visibility-km", "V", "0.1 to 100: says how bright the lights are and how far they reach"},
    {"--background", "WHEN", "day, dusk or night, for the reach; day if not given"},
    {"--json", "", "answer in JSON"},
};

constexpr std::array<std::string_view, 3> background_names{"day", "dusk", "night"};

// What one run of the command looks at.
struct Look {
    Runway runway;
    LightSystem lights;
    LightFaults faults;
    Point3 eye;
    double distance_nm = 0.0, eye_ft = 0.0;
    double visibility_m = 0.0;  // 0: not asked for
    Background background = Background::day;
};

// A level runway, 30 m wide.
Runway plain_runway(double nominal_path_rad) {
    Runway runway;
    runway.length_m = 1500.0;
    runway.width_m = 30.0;
    runway.aim_distance_m = aiming_point_marking(runway.length_m).distance_m;
    runway.lights.nominal_path_rad = nominal_path_rad;
    return runway;
}

Look read_look(Numbers& numbers, const Arguments& arguments) {
    Look look;
    look.distance_nm = numbers.number("--distance-nm", 0.0, 0.01, 20.0);
    look.eye_ft = numbers.number("--eye-ft", 0.0, 0.0, 20000.0);
    look.runway = plain_runway(rad_from_deg(numbers.number("--nominal-deg", 3.0, 2.5, 4.5)));
    look.runway.lights.kind = static_cast<LightSite::Kind>(numbers.one_of("--kind", 0, light_kind_names));
    look.runway.lights.side = static_cast<LightSite::Side>(numbers.one_of("--side", 0, light_side_names));
    look.lights = make_lights(look.runway);
    const Point3 aim = aim_point(look.runway);
    look.eye = {aim.x_m - m_from_nm(look.distance_nm), 0.0, aim.z_m + m_from_ft(look.eye_ft)};

    const auto last = static_cast<std::uint64_t>(look.lights.count);
    if (arguments.has("--out")) look.faults.out[numbers.whole("--out", 1, 1, last) - 1] = true;
    if (arguments.has("--misaimed"))
        look.faults.aim_error_rad[numbers.whole("--misaimed", 1, 1, last) - 1] =
            rad_from_minutes(numbers.number("--too-high-minutes", 0.0, -60.0, 60.0));
    look.faults.condensation = numbers.number("--condensation-percent", 0.0, 0.0, 100.0) / 100.0;
    look.visibility_m = 1000.0 * numbers.number("--visibility-km", 0.0, 0.1, 100.0);
    look.background = static_cast<Background>(numbers.one_of("--background", 0, background_names));
    return look;
}

int showing(const Look& look) {
    int count = 0;
    for (int i = 0; i < look.lights.pattern; ++i) count += unit_shows(look.lights, i, look.eye, look.faults);
    return count;
}

Json units_json(const Look& look) {
    Json units = Json::array();
    for (int i = 0; i < look.lights.count; ++i) {
        const LightUnit& unit = look.lights.units[static_cast<std::size_t>(i)];
        units.push_back({{"setting_deg", deg_from_rad(unit.setting_rad)},
                         {"eye_angle_deg", deg_from_rad(unit_eye_angle_rad(unit, look.eye))},
                         {"white_fraction", unit_white_fraction(look.lights, i, look.eye, look.faults)},
                         {"shows", unit_shows(look.lights, i, look.eye, look.faults)}});
    }
    return units;
}

std::string json_answer(const Look& look) {
    const int white = white_count(look.lights, look.eye, look.faults);
    const LightSite& site = look.runway.lights;
    Json json{{"kind", light_kind_names[static_cast<std::size_t>(site.kind)]},
              {"side", light_side_names[static_cast<std::size_t>(site.side)]},
              {"distance_nm", look.distance_nm},
              {"eye_ft", look.eye_ft},
              {"nominal_deg", deg_from_rad(site.nominal_path_rad)},
              {"units", units_json(look)},
              {"white_count", white},
              {"words", light_words(white, showing(look), site.kind)},
              {"minimum_eye_height_over_threshold_ft", ft_from_m(meht_m(look.runway, look.lights))},
              {"threshold_crossing_height_ft", ft_from_m(threshold_crossing_m(look.runway))}};
    if (look.visibility_m > 0.0) {
        const double intensity_cd = unit_intensity_cd(look.background);
        const double extinction = extinction_per_m(look.visibility_m);
        json["intensity_cd"] = intensity_cd;
        json["illuminance_lux"] = illuminance_lux(intensity_cd, m_from_nm(look.distance_nm), extinction);
        json["threshold_lux"] = threshold_lux(look.background);
        json["range_nm"] = nm_from_m(visual_range_m(intensity_cd, extinction, look.background));
    }
    return json_text(json);
}

std::string text_answer(const Look& look) {
    const int white = white_count(look.lights, look.eye, look.faults);
    std::string text = "The lights show " + light_words(white, showing(look), look.runway.lights.kind) +
                       ". Unit 1 is nearest the runway; a VASI's is its near bar.\n";
    for (int i = 0; i < look.lights.count; ++i) {
        const LightUnit& unit = look.lights.units[static_cast<std::size_t>(i)];
        const double white_fraction = unit_white_fraction(look.lights, i, look.eye, look.faults);
        text += row(format("unit %d, set to %.3f deg", i + 1, deg_from_rad(unit.setting_rad)),
                    format("seen at %.3f deg, ", deg_from_rad(unit_eye_angle_rad(unit, look.eye))) +
                        (unit_shows(look.lights, i, look.eye, look.faults)
                             ? format("%.0f %% white", 100.0 * white_fraction)
                             : std::string("dark")));
    }
    text += row("eye over the threshold", format("%.0f ft on the path, %.0f ft at least (MEHT)",
                                                 ft_from_m(threshold_crossing_m(look.runway)),
                                                 ft_from_m(meht_m(look.runway, look.lights))));
    if (look.visibility_m > 0.0)
        text += row("can be seen for",
                    format("%.1f NM",
                           nm_from_m(visual_range_m(unit_intensity_cd(look.background),
                                                    extinction_per_m(look.visibility_m), look.background))));
    return text;
}

Outcome lights(const Arguments& arguments) {
    Numbers numbers(arguments);
    const Look look = read_look(numbers, arguments);
    if (!numbers.problem().empty()) return complaint(bad_input, "lights", numbers.problem());
    return {good, arguments.has("--json") ? json_answer(look) : text_answer(look), ""};
}

}  // namespace

const Command& lights_command() {
    static const Command command{
        {"lights", "", 0, 0, "What slope lights show to an eye on the centreline of a runway 30 m wide.",
         "A unit is red below its setting, white above it, and blends within 3 minutes of arc (a VASI's "
         "bars\n"
         "within 15). Heights over the threshold are for level ground and an aim point 300 m beyond it.",
         options},
        lights};
    return command;
}

}  // namespace slopewise::cli
