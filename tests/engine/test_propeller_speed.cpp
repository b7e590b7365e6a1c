// How fast the propeller turns: limits that can be worked out on paper.
#include "base/units.h"
#include "flight/propeller_speed.h"
#include "tests/check.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

Engine plain_engine() { return {100000.0, 0.0, 0.5, 2.0, 0.8, 0.05}; }

}  // namespace

TEST_CASE("propeller speed: full power at rest is its measure, and without power it windmills") {
    const Engine engine = plain_engine();
    CHECK_NEAR(propeller_rpm(engine, 1.0, 0.0), static_full_rpm, 1e-3);
    // n = V / (J0 D): 36 m/s over 0.9 x 2 m are 20 turns a second. All within the last step of the solution.
    CHECK_NEAR(propeller_rpm(engine, 0.0, 36.0), 1200.0, 1e-3);
    CHECK(propeller_rpm(engine, 0.0, 0.0) < 1.0);
    CHECK(propeller_rpm(engine, 1.0, -5.0) == propeller_rpm(engine, 1.0, 0.0));  // tail first, as at rest
    // At rest it goes with the cube root of the power.
    CHECK_NEAR(propeller_rpm(engine, 0.125, 0.0), static_full_rpm / 2.0, 1e-3);
}

TEST_CASE("propeller speed: power put in is power taken, at every speed, and both turn it faster") {
    const Engine engine = plain_engine();
    for (int v = 0; v <= 80; v += 4) {
        double before = 0.0;
        for (int p = 1; p <= 20; ++p) {
            const double rpm = propeller_rpm(engine, p / 20.0, v);
            const double n = rpm / static_full_rpm;  // in the unit of the full speed at rest
            const double j = v / (rpm / 60.0 * engine.disc_diameter_m);
            const double taken =
                n * n * n * (1.0 - j * j / (windmill_advance_ratio * windmill_advance_ratio));
            CHECK_NEAR(taken, p / 20.0, 1e-6);  // of the rated power: a millionth of the solution's step
            CHECK(rpm > before);
            if (v > 0) CHECK(rpm > propeller_rpm(engine, p / 20.0, v - 4));
            before = rpm;
        }
    }
}

// Common practice, no source: what a tachometer of a light single with a fixed pitch shows on final approach
// and with full power; a check that the law gives an ear what it knows, no more.
TEST_CASE("propeller speed: the shipped tourer turns on final and at full power as such aeroplanes do") {
    const Engine& engine = tourer().engine;
    const double approach = propeller_rpm(engine, 0.3, mps_from_kt(65.0));
    const double climb = propeller_rpm(engine, 1.0, mps_from_kt(75.0));
    CHECK(approach > 1400.0);
    CHECK(approach < 1900.0);
    CHECK(climb > 2300.0);
    CHECK(climb < 2700.0);
}
