#include "flight/flare.h"

#include "base/exact_math.h"
#include "base/interpolate.h"
#include "base/units.h"

namespace slopewise {

Flare flare_of(double stall_mps, double path_rad, double screen_m) {
    Flare flare;
    flare.radius_m = square(1.23 * stall_mps) / (0.2 * gravity_mps2);
    flare.height_m = flare.radius_m * (1.0 - exact::cos(path_rad));
    flare.air_m = (screen_m - flare.height_m) / exact::tan(path_rad);
    flare.distance_m = flare.radius_m * exact::sin(path_rad);
    return flare;
}

}  // namespace slopewise
