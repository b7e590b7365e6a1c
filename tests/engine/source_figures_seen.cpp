#include "tests/engine/source_figures.h"

#include <algorithm>
#include <cmath>
#include <functional>

#include "base/units.h"
#include "board/runway_shape.h"
#include "board/stills.h"
#include "lesson/approach_choice.h"
#include "lesson/briefing.h"
#include "review/touchdown.h"
#include "tests/fixtures.h"
#include "world/runway_lights.h"
#include "world/sight.h"
#include "world/visibility.h"

namespace slopewise::test {
namespace {

// The angles at which the units turn white, the highest first, in degrees.
std::vector<double> settings_deg(LightSite::Kind kind) {
    Runway runway = plain_runway();
    runway.lights.kind = kind;
    const LightSystem lights = make_lights(runway);
    std::vector<double> angles;
    for (int i = 0; i < lights.pattern; ++i)
        angles.push_back(deg_from_rad(lights.units[static_cast<std::size_t>(i)].setting_rad));
    std::ranges::stable_sort(angles, std::ranges::greater{});
    return angles;
}

std::vector<double> after(double first, const std::vector<double>& rest) {
    std::vector<double> all{first};
    all.insert(all.end(), rest.begin(), rest.end());
    return all;
}

double tan_deg(double angle_deg) { return std::tan(rad_from_deg(angle_deg)); }

// How deep, in feet, the two-and-two band is at a distance from a PAPI on 3 degrees.
double band_ft(double distance_m) {
    const std::vector<double> papi = settings_deg(LightSite::Kind::papi);
    return ft_from_m(distance_m * (tan_deg(papi[1]) - tan_deg(papi[2])));
}

int white_units_at(double eye_deg) {
    const Runway runway = plain_runway();
    const double distance_m = m_from_nm(1.0);
    const Point3 aim = aim_point(runway);
    return white_count(make_lights(runway),
                       {aim.x_m - distance_m, 0.0, aim.z_m + distance_m * tan_deg(eye_deg)});
}

void hold_lights(HeldFigures& held) {
    const double path_deg = deg_from_rad(plain_runway().lights.nominal_path_rad);
    held.tells("papi_settings", after(path_deg, settings_deg(LightSite::Kind::papi)));
    held.tells("papi_harmonised", after(path_deg, settings_deg(LightSite::Kind::papi_harmonised)));
    held.tells("apapi_settings", after(path_deg, settings_deg(LightSite::Kind::apapi)));
    const std::vector<double> vasi = settings_deg(LightSite::Kind::vasi);
    held.tells("vasi_settings", {path_deg, vasi[1], vasi[0]});
    held.tells("papi_pictures", {3.5, 3.2, 3.0, 2.8, 2.5});
    CHECK(white_units_at(3.55) == 4);
    CHECK(white_units_at(3.2) == 3);
    CHECK(white_units_at(3.0) == 2);
    CHECK(white_units_at(2.8) == 1);
    CHECK(white_units_at(2.45) == 0);
    const std::vector<double> papi = settings_deg(LightSite::Kind::papi);
    held.tells("papi_band", {papi[1] - papi[2], band_ft(m_from_nm(1.0)), 1, band_ft(m_from_nm(0.5)), 0.5});
    const auto at_height_m = [&](double height_ft) { return m_from_ft(height_ft) / tan_deg(path_deg); };
    held.tells("papi_band_near", {band_ft(at_height_m(200)), 200, band_ft(at_height_m(50)), 50});
    held.tells("papi_blend", {60.0 * deg_from_rad(papi_transition_rad),
                              ft_from_m(m_from_nm(1.0) * papi_transition_rad), 1});
    held.tells("vasi_blend", {deg_from_rad(vasi_transition_rad)});
    held.tells("papi_place", {LightSite{}.edge_gap_m, LightSite{}.spacing_m});
    const LightSite& apapi = find_runway(shipped(), "hazelcombe")->lights;
    CHECK(apapi.kind == LightSite::Kind::apapi);
    held.tells("apapi_place", {apapi.edge_gap_m, apapi.spacing_m});
    held.tells("light_intensity", {unit_intensity_cd(Background::day)});
    held.tells("light_threshold", {threshold_lux(Background::day), threshold_lux(Background::dusk),
                                   threshold_lux(Background::night)});
}

// Just inside and just outside of the beam that the entry tells.
void hold_beam(HeldFigures& held) {
    held.tells("light_beam", {15});
    const LightSystem lights = make_lights(plain_runway());
    const LightUnit& unit = lights.units[0];
    const auto shows_at = [&](double aside_deg) {
        const double distance_m = 1000.0;
        return unit_shows(lights, 0,
                          {unit.lens.x_m - distance_m * std::cos(rad_from_deg(aside_deg)),
                           unit.lens.y_m + distance_m * std::sin(rad_from_deg(aside_deg)), 50.0});
    };
    CHECK(shows_at(14.9));
    CHECK_FALSE(shows_at(15.1));
}

void hold_path(HeldFigures& held) {
    const Runway& usual = *find_runway(shipped(), "larkmoor");
    held.tells("nominal_path", {deg_from_rad(usual.lights.nominal_path_rad)});
    const Briefing briefing = make_briefing(shipped_scenario("final_calm"));
    std::vector<double> heights;
    for (const Briefing::PathHeight& point : briefing.heights) {
        heights.push_back(ft_from_m(point.height_m));
        heights.push_back(nm_from_m(point.distance_m));
    }
    held.tells("path_heights", heights);
    held.tells("path_gradient", {3.0, ft_from_m(m_from_nm(1.0)) * tan_deg(3.0), 1});
    held.tells("start_off_path", {off_path_deg});
    held.tells("start_distances", {double(choice_distances_nm[0]), double(choice_distances_nm[1]),
                                   double(choice_distances_nm[2])});
    held.tells("aim_marking",
               {aiming_point_marking(799.9).distance_m, 800, aiming_point_marking(800).distance_m, 1200,
                aiming_point_marking(1200).distance_m, 2400, aiming_point_marking(2400).distance_m});
    CHECK(aiming_point_marking(1199.9).distance_m == aiming_point_marking(800).distance_m);
    CHECK(aiming_point_marking(2399.9).distance_m == aiming_point_marking(1200).distance_m);
    held.tells("usual_flare", {ft_from_m(usual_float_least_m), ft_from_m(usual_float_most_m)});
}

void hold_runway_lights(HeldFigures& held) {
    double before_m = 0.0, widest_m = 0.0;
    for (const RunwayLight& light : make_runway_lights({1500, 30, 0, true, false}))
        if (light.colour == RunwayLight::Colour::white) {
            widest_m = std::max(widest_m, std::abs(light.place.x_m - before_m));
            before_m = light.place.x_m;
        }
    held.tells("edge_lights", {widest_m});
    double reach_m = 0.0, crossbar_m = 0.0, crossbar_at_m = 0.0, spacing_m = 1e9;
    for (const RunwayLight& light : make_runway_lights({1500, 30, 0, false, true})) {
        const double out_m = -light.place.x_m;
        reach_m = std::max(reach_m, out_m);
        if (light.place.y_m == 0.0 && out_m > 0.0) spacing_m = std::min(spacing_m, out_m);
        if (2.0 * light.place.y_m <= crossbar_m) continue;
        crossbar_m = 2.0 * light.place.y_m;
        crossbar_at_m = out_m;
    }
    held.tells("approach_lights", {reach_m, spacing_m, crossbar_m, crossbar_at_m});
}

// Where copying the usual shape leads, in degrees.
double copied_deg(double width_m, double slope) {
    const Runway usual = standard_runway(plain_runway());
    Runway runway = usual;
    runway.width_m = width_m;
    runway.slope = slope;
    return deg_from_rad(path_of_usual_shape_rad(runway, usual, still_distance_m));
}

void hold_boards(HeldFigures& held) {
    const auto& w = still_widths_m;
    const auto& s = still_slopes_percent;
    const double nm = nm_from_m(still_distance_m), width_m = plain_runway().width_m;
    held.tells("width_trap", {nm, w[0], w[1], copied_deg(w[0], 0), w[2], copied_deg(w[2], 0)});
    held.tells("slope_trap",
               {nm, s[0], copied_deg(width_m, s[0] / 100), -s[2], copied_deg(width_m, s[2] / 100)});
    held.tells("dark_ground", {deg_from_rad(dark_ground_path_rad)});
}

}  // namespace

void hold_what_is_seen(HeldFigures& held) {
    hold_lights(held);
    hold_beam(held);
    hold_path(held);
    hold_runway_lights(held);
    hold_boards(held);
}

}  // namespace slopewise::test
