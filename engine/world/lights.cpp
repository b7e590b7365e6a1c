#include "world/lights.h"

#include <cmath>

#include "base/exact_math.h"
#include "base/interpolate.h"
#include "base/units.h"

namespace slopewise {

LightBar papi(const Runway& runway) {
    constexpr double offset_minutes[] = {30.0, 10.0, -10.0, -30.0};
    const LightSite& site = runway.lights;
    const Point3 origin = aim_point(runway);
    const double outward = site.side == LightSite::Side::left ? -1.0 : 1.0;

    LightBar bar;
    for (const double minutes : offset_minutes) {
        const double lateral_m = runway.width_m / 2.0 + site.edge_gap_m + site.spacing_m * bar.count;
        bar.units[static_cast<std::size_t>(bar.count++)] = {
            {origin.x_m, outward * lateral_m, origin.z_m},
            site.nominal_path_rad + rad_from_deg(minutes / 60.0)};
    }
    return bar;
}

double unit_eye_angle_rad(const LightUnit& unit, const Point3& eye) {
    const double along_m = unit.lens.x_m - eye.x_m;
    const double across_m = unit.lens.y_m - eye.y_m;
    return exact::atan2(eye.z_m - unit.lens.z_m, std::sqrt(along_m * along_m + across_m * across_m));
}

double unit_white_fraction(const LightUnit& unit, const Point3& eye) {
    return clamp((unit_eye_angle_rad(unit, eye) - unit.setting_rad) / light_transition_rad + 0.5, 0.0, 1.0);
}

bool unit_faces(const LightUnit& unit, const Point3& eye) { return eye.x_m < unit.lens.x_m; }

int white_count(const LightBar& bar, const Point3& eye) {
    int white = 0, facing = 0;
    for (int i = 0; i < bar.count; ++i) {
        const LightUnit& unit = bar.units[static_cast<std::size_t>(i)];
        if (!unit_faces(unit, eye)) continue;
        ++facing;
        if (unit_white_fraction(unit, eye) > 0.5) ++white;
    }
    return facing > 0 ? white : -1;
}

}  // namespace slopewise
