#include "base/units.h"
#include "cli/commands.h"
#include "cli/format.h"
#include "cli/json_text.h"
#include "review/words.h"
#include "world/lights.h"

namespace slopewise::cli {
namespace {

constexpr Option options[] = {
    {"--distance-nm", "D", "along the ground from the lights to the eye, 0.01 to 20", true},
    {"--eye-ft", "H", "height of the eye above the lenses, 0 to 20000", true},
    {"--nominal-deg", "A", "nominal path of the lights, 2.5 to 4.5; 3 if not given"},
    {"--json", "", "answer in JSON"},
};

// A level runway, 30 m wide, its lights on the left.
Runway plain_runway(double nominal_path_rad) {
    Runway runway;
    runway.length_m = 1500.0;
    runway.width_m = 30.0;
    runway.aim_distance_m = aiming_point_marking(runway.length_m).distance_m;
    runway.lights.nominal_path_rad = nominal_path_rad;
    return runway;
}

Outcome lights(const Arguments& arguments) {
    Numbers numbers(arguments);
    const double distance_nm = numbers.number("--distance-nm", 0.0, 0.01, 20.0);
    const double eye_ft = numbers.number("--eye-ft", 0.0, 0.0, 20000.0);
    const double nominal_deg = numbers.number("--nominal-deg", 3.0, 2.5, 4.5);
    if (!numbers.problem().empty()) return complaint(bad_input, "lights", numbers.problem());

    const Runway runway = plain_runway(rad_from_deg(nominal_deg));
    const LightBar bar = papi(runway);
    const Point3 aim = aim_point(runway);
    const Point3 eye{aim.x_m - m_from_nm(distance_nm), 0.0, aim.z_m + m_from_ft(eye_ft)};
    const int white = white_count(bar, eye);

    Json units = Json::array();
    std::string rows;
    for (int i = 0; i < bar.count; ++i) {
        const LightUnit& unit = bar.units[static_cast<std::size_t>(i)];
        const double setting_deg = deg_from_rad(unit.setting_rad);
        const double angle_deg = deg_from_rad(unit_eye_angle_rad(unit, eye));
        const double fraction = unit_white_fraction(unit, eye);
        units.push_back(
            {{"setting_deg", setting_deg}, {"eye_angle_deg", angle_deg}, {"white_fraction", fraction}});
        rows += row(format("unit %d, set to %.3f deg", i + 1, setting_deg),
                    format("seen at %.3f deg, %.0f %% white", angle_deg, 100.0 * fraction));
    }
    if (arguments.has("--json")) {
        const Json json{{"distance_nm", distance_nm},
                        {"eye_ft", eye_ft},
                        {"nominal_deg", nominal_deg},
                        {"units", units},
                        {"white_count", white}};
        return {good, json_text(json), ""};
    }
    return {good, "The lights show " + light_words(white) + ". Unit 1 is nearest the runway.\n" + rows, ""};
}

}  // namespace

const Command& lights_command() {
    static const Command command{
        {"lights", "", 0, 0, "What four slope lights show to an eye on the centreline of a runway 30 m wide.",
         "A unit is red below its setting, white above it, and blends within 3 minutes of arc.", options},
        lights};
    return command;
}

}  // namespace slopewise::cli
