#include "flight/propeller_speed.h"

#include "base/interpolate.h"
#include "base/units.h"

namespace slopewise {

double propeller_rpm(const Engine& engine, double power_of_rated, double tas_mps) {
    constexpr double full = static_full_rpm / 60.0;
    const double p = clamp(power_of_rated, 0.0, 1.0) * full * full * full;
    const double w = tas_mps > 0.0 ? tas_mps / (windmill_advance_ratio * engine.disc_diameter_m) : 0.0;
    // From above, where the cubic rises and is hollow upwards, Newton's steps fall towards the root and never
    // pass it. Half a dozen do; only at rest without power, a threefold root, it takes dozens.
    double n = w + full;
    for (int i = 0; i < 60; ++i) {
        const double step = (n * (n * n - w * w) - p) / (3.0 * n * n - w * w);
        n -= step;
        if (step < 1e-6) break;
    }
    return 60.0 * n;
}

}  // namespace slopewise
