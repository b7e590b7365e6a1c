#include <cmath>

#include "base/units.h"
#include "flight/propeller.h"
#include "tests/check.h"
#include "tests/fixtures.h"
#include "world/atmosphere.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

constexpr double density = standard_air::density_kgpm3;

Engine plain_engine() { return {100000.0, 0.0, 0.5, 2.0, 0.8, 0.05}; }
double disc_m2(const Engine& engine) { return pi / 4.0 * engine.disc_diameter_m * engine.disc_diameter_m; }

}  // namespace

TEST_CASE("propeller: at rest the thrust is momentum theory's, finite") {
    // T^3 = 2 rho A P^2 with P the power that reaches the slipstream (momentum theory).
    const Engine engine = plain_engine();
    const double power_w = 0.8 * 100000.0;
    CHECK_NEAR(net_thrust_n(engine, 1.0, 0.0, density),
               std::cbrt(2.0 * density * disc_m2(engine) * power_w * power_w), 1e-6);
    CHECK(net_thrust_n(engine, 1.0, -5.0, density) == net_thrust_n(engine, 1.0, 0.0, density));
}

TEST_CASE("propeller: thrust obeys momentum theory at every speed and power") {
    // T (V + v) = eta P and T = 2 rho A v (V + v), v being solved from the second; at full power nothing
    // windmills.
    Engine engine = plain_engine();
    engine.windmill_drag = 0.0;
    double worst = 0.0;
    for (int p = 1; p <= 20; ++p) {
        for (int v = 0; v <= 120; v += 2) {
            const double thrust_n = net_thrust_n(engine, p / 20.0, v, density);
            const double slip_mps =
                0.5 * (std::sqrt(v * v + 2.0 * thrust_n / (density * disc_m2(engine))) - v);
            const double power_w = 0.8 * 100000.0 * p / 20.0;
            worst = std::fmax(worst, std::abs(thrust_n * (v + slip_mps) / power_w - 1.0));
        }
    }
    CHECK(worst < 1e-12);  // rounding alone: the speed through the disc has a closed form
}

TEST_CASE("propeller: fast, the thrust tends to efficiency times power over speed") {
    const Engine engine = plain_engine();
    const double thrust_n = net_thrust_n(engine, 1.0, 300.0, density);
    CHECK_NEAR(thrust_n * 300.0 / (0.8 * 100000.0), 1.0,
               0.001);  // the slip is a thousandth of the speed there
}

TEST_CASE("propeller: with the lever closed it drags, in proportion to dynamic pressure") {
    const Engine engine = plain_engine();
    const double expected_n = 0.05 * 0.5 * density * 33.0 * 33.0 * disc_m2(engine);
    CHECK_NEAR(net_thrust_n(engine, 0.0, 33.0, density), -expected_n, 1e-9);  // rounding
    CHECK_NEAR(net_thrust_n(engine, 0.0, 66.0, density), -4.0 * expected_n, 1e-9);
    CHECK(net_thrust_n(engine, 0.0, 0.0, density) == 0.0);
}

TEST_CASE("propeller: more power is more thrust, more speed less") {
    const Engine& engine = tourer().engine;
    for (int v = 0; v <= 90; v += 10) {
        double before = net_thrust_n(engine, 0.0, v, density);
        for (int p = 1; p <= 100; ++p) {
            const double now = net_thrust_n(engine, p / 100.0, v, density);
            if (!(now > before)) FAIL_CHECK("no more thrust at " << p << " percent and " << v << " m/s");
            before = now;
        }
        CHECK(net_thrust_n(engine, 1.0, v + 1.0, density) < net_thrust_n(engine, 1.0, v, density));
    }
}

TEST_CASE("propeller: the power for a thrust undoes the thrust of a power") {
    const Engine& engine = tourer().engine;
    for (const double power : {0.01, 0.1, 0.33, 0.9, 1.0}) {
        const double thrust_n = net_thrust_n(engine, power, 33.4, 1.1);
        CHECK_NEAR(power_fraction_for_thrust(engine, thrust_n, 33.4, 1.1), power,
                   1e-9);  // halving to rounding
    }
    CHECK(power_fraction_for_thrust(engine, -5000.0, 33.4, 1.1) <
          0.0);  // more drag than the propeller can give
    CHECK(power_fraction_for_thrust(engine, 9000.0, 33.4, 1.1) >
          1.0);  // more thrust than the engine can give
}

TEST_CASE("propeller: a piston engine loses power with density by Gagg and Ferrar's rule") {
    // sigma - (1 - sigma)/7.55 (formula from memory, after Gagg and Ferrar 1934). In the form (1.132 sigma -
    // 0.132), also common in textbooks, the same to three decimals.
    CHECK(power_density_factor(1.0) == 1.0);
    for (const double sigma : {0.9, 0.7386, 0.6})
        CHECK_NEAR(power_density_factor(sigma), 1.132 * sigma - 0.132, 0.0005);
    const Engine engine = plain_engine();
    CHECK(net_thrust_n(engine, 1.0, 33.0, 0.9) < net_thrust_n(engine, 1.0, 33.0, density));
}
