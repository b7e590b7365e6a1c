#include "board/stills.h"

#include "base/random.h"
#include "base/units.h"
#include "drill/draw.h"
#include "drill/still.h"

namespace slopewise {
namespace {

constexpr int in_a_set = 3;

// Chosen so that no two sets come in the same order and none in that of its values (a test holds it).
constexpr std::array<std::uint64_t, still_set_count> seeds{11, 6, 7, 1};

Outlook hour(const Outlook& like, int which) {
    Outlook outlook = like;
    outlook.light = which == 0 ? Daylight::day : Daylight::night;
    outlook.ground_lights = which == 1;
    return outlook;
}

}  // namespace

Runway standard_runway(const Runway& like) {
    Runway runway = like;
    runway.length_m = 1500.0;
    runway.width_m = 30.0;
    runway.slope = 0.0;
    runway.aim_distance_m = aiming_point_marking(runway.length_m).distance_m;
    runway.lights = {};
    runway.lights.nominal_path_rad = rad_from_deg(3.0);
    runway.edge_lights = true;
    return runway;
}

std::vector<BoardStill> make_stills(const Scenario& base, StillSet set) {
    Scenario usual = base;
    usual.surroundings.runway = standard_runway(base.surroundings.runway);
    usual.surroundings.wind = {};
    const double pitch_rad =
        still_at(usual, eye_on_line(usual.surroundings.runway, still_distance_m, 0.0)).pitch_rad;
    std::vector<BoardStill> stills;
    for (int which = 0; which < in_a_set; ++which) {
        const auto i = static_cast<std::size_t>(which);
        BoardStill still{usual, {}, pitch_rad, which};
        Runway& runway = still.scenario.surroundings.runway;
        double error_rad = 0.0;
        if (set == StillSet::paths)
            error_rad = rad_from_deg(still_paths_deg[i]) - runway.lights.nominal_path_rad;
        if (set == StillSet::widths) runway.width_m = still_widths_m[i];
        if (set == StillSet::slopes) runway.slope = still_slopes_percent[i] / 100.0;
        if (set == StillSet::lights) still.scenario.lesson.outlook = hour(base.lesson.outlook, which);
        still.scenario.lights = make_lights(runway);
        still.eye = eye_on_line(runway, still_distance_m, error_rad);
        stills.push_back(still);
    }
    Random random{seeds[static_cast<std::size_t>(set)]};
    shuffle(random, stills);
    return stills;
}

}  // namespace slopewise
