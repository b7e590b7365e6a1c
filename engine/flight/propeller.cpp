#include "flight/propeller.h"

#include <cmath>

#include "base/exact_math.h"
#include "base/interpolate.h"
#include "base/units.h"
#include "world/atmosphere.h"

namespace slopewise {
namespace {

double disc_area_m2(const Engine& engine) { return pi / 4.0 * square(engine.disc_diameter_m); }

double windmill_drag_n(const Engine& engine, double power_fraction, double tas_mps, double density_kgpm3) {
    const double closed = power_fraction < 1.0 ? 1.0 - power_fraction : 0.0;
    return closed * engine.windmill_drag * 0.5 * density_kgpm3 * square(tas_mps) * disc_area_m2(engine);
}

// Speed through the disc u = V + v that solves u^2 (u - V) = c, by Cardano's formula: for V >= 0 and c > 0 it
// has this one positive root, and no term of it cancels another.
double disc_speed_mps(double tas_mps, double c) {
    const double third = (1.0 / 3.0) * tas_mps;
    const double cube = third * third * third;
    const double s_cubed = cube + 0.5 * c + std::sqrt(c * (cube + 0.25 * c));
    const double s = exact::exp((1.0 / 3.0) * exact::log(s_cubed));  // sooner done than a cbrt
    return third + s + third * third / s;
}

}  // namespace

double power_density_factor(double density_ratio) { return density_ratio - (1.0 - density_ratio) / 7.55; }

double net_thrust_n(const Engine& engine, double power_fraction, double tas_mps, double density_kgpm3) {
    const double power_w = engine.efficiency * engine.rated_power_w * power_fraction *
                           power_density_factor(density_kgpm3 / standard_air::density_kgpm3);
    const double drag_n = windmill_drag_n(engine, power_fraction, tas_mps, density_kgpm3);
    if (power_w < 1.0) return -drag_n;
    const double speed = tas_mps > 0.0 ? tas_mps : 0.0;  // tail first, the disc gives its static thrust
    const double c = power_w / (2.0 * density_kgpm3 * disc_area_m2(engine));
    return power_w / disc_speed_mps(speed, c) - drag_n;
}

double power_fraction_for_thrust(const Engine& engine, double thrust_n, double tas_mps,
                                 double density_kgpm3) {
    // Net thrust rises with power, so halving an interval finds it; the ends lie beyond any real lever.
    double low = 0.0, high = 4.0;
    if (net_thrust_n(engine, low, tas_mps, density_kgpm3) > thrust_n) return -1.0;
    for (int i = 0; i < 60; ++i) {
        const double middle = 0.5 * (low + high);
        (net_thrust_n(engine, middle, tas_mps, density_kgpm3) < thrust_n ? low : high) = middle;
    }
    return 0.5 * (low + high);
}

}  // namespace slopewise
