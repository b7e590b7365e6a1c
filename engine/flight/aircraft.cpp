#include "flight/aircraft.h"

#include <cmath>

#include "base/interpolate.h"
#include "base/units.h"
#include "world/atmosphere.h"

namespace slopewise {

FlapEffect flap_effect(const Aircraft& aircraft, double position) {
    const double limited = clamp(position, 0.0, aircraft.flap_count - 1.0);
    const int below =
        limited >= aircraft.flap_count - 1.0 ? aircraft.flap_count - 1 : static_cast<int>(limited);
    const int above = below + 1 < aircraft.flap_count ? below + 1 : below;
    const FlapSetting& a = aircraft.flaps[static_cast<std::size_t>(below)];
    const FlapSetting& b = aircraft.flaps[static_cast<std::size_t>(above)];
    const double fraction = limited - below;
    return {lerp(a.lift_increment, b.lift_increment, fraction),
            lerp(a.drag_increment, b.drag_increment, fraction), lerp(a.max_lift, b.max_lift, fraction),
            lerp(a.alpha_shift_rad, b.alpha_shift_rad, fraction)};
}

double stall_speed_mps(const Aircraft& aircraft, int flap) {
    const double weight_n = aircraft.mass_kg * gravity_mps2;
    const double max_lift = aircraft.flaps[static_cast<std::size_t>(flap)].max_lift;
    return std::sqrt(2.0 * weight_n / (standard_air::density_kgpm3 * aircraft.wing.area_m2 * max_lift));
}

}  // namespace slopewise
