#include "world/lights.h"

#include <cmath>
#include <span>

#include "base/exact_math.h"
#include "base/interpolate.h"

namespace slopewise {
namespace {

constexpr double papi_minutes[] = {30.0, 10.0, -10.0, -30.0};
constexpr double harmonised_minutes[] = {35.0, 15.0, -15.0, -35.0};
constexpr double apapi_minutes[] = {15.0, -15.0};
constexpr double vasi_bar_minutes[] = {-15.0, 15.0};

constexpr double vasi_bar_gap_m = 210.0;  // between near and far bar, along the runway: 700 ft, from memory
constexpr double half_beam_rad = rad_from_deg(15.0);

double outward(LightSite::Side side) { return side == LightSite::Side::right ? 1.0 : -1.0; }

void add_unit(LightSystem& lights, const LightUnit& unit) {
    lights.units[static_cast<std::size_t>(lights.count++)] = unit;
}

// A bar abeam the aim point, lenses at its elevation, units outwards from the inner one.
void add_bar(LightSystem& lights, const Runway& runway, std::span<const double> offsets, double side) {
    const Point3 origin = aim_point(runway);
    double lateral_m = runway.width_m / 2.0 + runway.lights.edge_gap_m;
    for (const double offset : offsets) {
        add_unit(lights, {{origin.x_m, side * lateral_m, origin.z_m},
                          runway.lights.nominal_path_rad + rad_from_minutes(offset),
                          papi_transition_rad});
        lateral_m += runway.lights.spacing_m;
    }
}

// One box of each bar, the near one half a gap before the aim point and the far one half a gap beyond it.
void add_vasi(LightSystem& lights, const Runway& runway, double side) {
    const Point3 origin = aim_point(runway);
    const double lateral_m = runway.width_m / 2.0 + runway.lights.edge_gap_m;
    for (int bar = 0; bar < 2; ++bar) {
        const double x_m = origin.x_m + (bar == 0 ? -0.5 : 0.5) * vasi_bar_gap_m;
        add_unit(lights, {{x_m, side * lateral_m, ground_height_m(runway, x_m)},
                          runway.lights.nominal_path_rad + rad_from_minutes(vasi_bar_minutes[bar]),
                          vasi_transition_rad});
    }
}

void add_side(LightSystem& lights, const Runway& runway, double side) {
    switch (runway.lights.kind) {
    case LightSite::Kind::papi: return add_bar(lights, runway, papi_minutes, side);
    case LightSite::Kind::papi_harmonised: return add_bar(lights, runway, harmonised_minutes, side);
    case LightSite::Kind::apapi: return add_bar(lights, runway, apapi_minutes, side);
    case LightSite::Kind::vasi: return add_vasi(lights, runway, side);
    }
}

}  // namespace

LightSystem make_lights(const Runway& runway) {
    LightSystem lights;
    add_side(lights, runway, outward(runway.lights.side));
    lights.pattern = lights.count;
    if (runway.lights.side == LightSite::Side::both) add_side(lights, runway, 1.0);
    return lights;
}

double unit_eye_angle_rad(const LightUnit& unit, const Point3& eye) {
    const double along_m = unit.lens.x_m - eye.x_m;
    const double across_m = unit.lens.y_m - eye.y_m;
    return exact::atan2(eye.z_m - unit.lens.z_m, std::sqrt(along_m * along_m + across_m * across_m));
}

double unit_white_fraction(const LightSystem& lights, int unit, const Point3& eye,
                           const LightFaults& faults) {
    const auto i = static_cast<std::size_t>(unit);
    const LightUnit& light = lights.units[i];
    const double above_rad = unit_eye_angle_rad(light, eye) - light.setting_rad - faults.aim_error_rad[i];
    const double clear = clamp(above_rad / light.transition_rad + 0.5, 0.0, 1.0);
    return lerp(clear, 1.0, 0.6 * faults.condensation);
}

bool unit_shows(const LightSystem& lights, int unit, const Point3& eye, const LightFaults& faults) {
    const auto i = static_cast<std::size_t>(unit);
    if (faults.all_out || faults.out[i]) return false;
    const Point3& lens = lights.units[i].lens;
    return eye.x_m < lens.x_m &&
           std::abs(eye.y_m - lens.y_m) <= (lens.x_m - eye.x_m) * exact::tan(half_beam_rad);
}

int white_count(const LightSystem& lights, const Point3& eye, const LightFaults& faults) {
    int white = 0, showing = 0;
    for (int i = 0; i < lights.pattern; ++i) {
        if (!unit_shows(lights, i, eye, faults)) continue;
        ++showing;
        if (unit_white_fraction(lights, i, eye, faults) > 0.5) ++white;
    }
    return showing > 0 ? white : -1;
}

double meht_m(const Runway& runway, const LightSystem& lights) {
    // The highest setting below the path: the lower edge of the on-path sector.
    double edge_rad = -1.0;
    for (int i = 0; i < lights.pattern; ++i) {
        const double setting = lights.units[static_cast<std::size_t>(i)].setting_rad;
        if (setting < runway.lights.nominal_path_rad && setting > edge_rad) edge_rad = setting;
    }
    return runway.aim_distance_m * exact::tan(edge_rad - rad_from_minutes(2.0)) + aim_point(runway).z_m;
}

double threshold_crossing_m(const Runway& runway) {
    return runway.aim_distance_m * exact::tan(runway.lights.nominal_path_rad) + aim_point(runway).z_m;
}

}  // namespace slopewise
