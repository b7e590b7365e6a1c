// What the equations of motion do that no closed form gives: how pitch, flap and power work together, and the
// ground.
#include "flight/dynamics.h"

#include <cmath>
#include <limits>

#include "base/units.h"
#include "flight/aerodynamics.h"
#include "flight/propeller.h"
#include "flight/trim.h"
#include "tests/check.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

// A trimmed flight high above the approach, the hands on the trimmed controls.
struct Flown {
    Surroundings surroundings = still_air();
    ControlPositions hands;
    FlightState state;

    Flown(double speed_kt, int flap, double path_deg, double height_m = 900.0) {
        const TrimWanted wanted{mps_from_kt(speed_kt), flap, rad_from_deg(path_deg), height_m};
        const TrimState trim = solve_trim(tourer(), surroundings, wanted);
        hands = trim.controls;
        state = trimmed_start(wanted, trim, -9000.0);
    }
    void fly(double seconds) {
        for (int i = 0; i < static_cast<int>(seconds * 120.0); ++i)
            state = advance(tourer(), surroundings, hands, state, tick_s);
    }
    FlightForces forces() const { return forces_at(tourer(), surroundings, hands, state); }
    double cas_kt() const { return kt_from_mps(cas_from_tas_mps(forces().tas_mps, forces().air)); }
    double sink_fpm() const { return -fpm_from_mps(state.vz_mps); }
};

}  // namespace

TEST_CASE("dynamics: flap lowered hands off balloons the aeroplane, and it settles slower") {
    Flown flown(75.0, 0, 0.0);
    const double level_m = flown.state.z_m;
    flown.hands.flap = 2;
    double highest_m = level_m;
    for (int i = 0; i < 12 * 120; ++i) {
        flown.fly(tick_s + 1e-9);
        highest_m = std::fmax(highest_m, flown.state.z_m);
    }
    CHECK(highest_m > level_m + 3.0);  // ten feet: a balloon that nobody misses
    flown.fly(120.0);                  // and once the phugoid has died away
    CHECK(flown.cas_kt() < 72.0);
    CHECK(flown.sink_fpm() > 100.0);  // the flap's drag is paid with height
    MESSAGE("flap balloon: " << ft_from_m(highest_m - level_m) << " ft; settles at " << flown.cas_kt()
                             << " kt");
}

TEST_CASE("dynamics: the flap takes its time, one setting after another") {
    Flown flown(75.0, 0, 0.0);
    flown.hands.flap = 2;
    flown.fly(tourer().flap_travel_s);
    CHECK_NEAR(flown.state.flap, 1.0, 0.01);  // one setting in one travel time
    flown.fly(2.0 * tourer().flap_travel_s);
    CHECK_NEAR(flown.state.flap, 2.0, 0.001);  // it slows over the last tenth of a setting
    flown.hands.flap = 0;
    flown.fly(2.5 * tourer().flap_travel_s);
    CHECK_NEAR(flown.state.flap, 0.0, 0.01);
}

TEST_CASE("dynamics: power lags behind the lever by its time constant") {
    Flown flown(65.0, 2, -3.0);
    const double before = flown.state.power;
    flown.hands.throttle = 1.0;
    flown.fly(tourer().engine.lag_s);
    // First order: 1 - 1/e of the way after one time constant, to within the tick that 0.7 s is cut to.
    CHECK_NEAR((flown.state.power - before) / (1.0 - before), 1.0 - std::exp(-1.0), 0.005);
    CHECK(settled_power(tourer().engine, 0.0) == tourer().engine.idle_fraction);
    CHECK(settled_power(tourer().engine, 1.0) == 1.0);
}

TEST_CASE("dynamics: with the trim untouched, more power raises the path at nearly the same speed") {
    // Power moves the path, attitude holds the speed (common practice, no source; the equations give it).
    Flown flown(65.0, 2, -3.0);
    const double sink_before = flown.sink_fpm(), speed_before = flown.cas_kt();
    flown.hands.throttle += 0.10;
    flown.fly(120.0);
    CHECK(flown.sink_fpm() < sink_before - 80.0);
    CHECK_NEAR(flown.cas_kt(), speed_before, 2.0);  // "nearly the same": a pointer's width
    MESSAGE("ten percent more lever: sink " << sink_before << " to " << flown.sink_fpm() << " ft/min, speed "
                                            << speed_before << " to " << flown.cas_kt() << " kt");
}

TEST_CASE("dynamics: pulling and holding trades speed for height first, and more stick means slower") {
    Flown flown(75.0, 1, 0.0);
    flown.hands.stick = 0.15;
    flown.fly(4.0);
    CHECK(flown.state.z_m > 900.5);
    CHECK(flown.cas_kt() < 74.0);
    flown.hands.stick = -0.15;
    flown.fly(8.0);
    CHECK(flown.sink_fpm() > 300.0);
}

TEST_CASE("dynamics: below the speed of least power, raising the nose without power ends in more sink") {
    // FAA Airplane Flying Handbook 8083-3C, page 193.
    Flown flown(56.0, 2, -3.0);  // least power with landing flap is near 59 kt
    const double sink_before = flown.sink_fpm();
    flown.hands.stick = 0.1;
    flown.fly(90.0);
    MESSAGE("back side: " << flown.cas_kt() << " kt, sink " << sink_before << " to " << flown.sink_fpm()
                          << " ft/min");
    CHECK(flown.cas_kt() < 55.0);
    CHECK(flown.sink_fpm() > sink_before + 20.0);
}

TEST_CASE("dynamics: a headwind that fades costs airspeed") {
    // Ten knots less headwind in two seconds: the airspeed drops by most of it at once, inertia holds the
    // ground speed.
    Flown flown(65.0, 2, -3.0);
    flown.surroundings.wind.headwind_mps = mps_from_kt(10.0);
    flown.state.vx_mps -= mps_from_kt(10.0);
    const double before = flown.cas_kt();
    flown.surroundings.wind.headwind_mps = 0.0;
    flown.fly(0.5);
    CHECK(flown.cas_kt() < before - 5.0);
}

TEST_CASE("dynamics: a constant wind is another frame of the same flight") {
    // Galilean relativity: away from the ground, the flight in a steady wind is the flight in still air,
    // carried along.
    Flown still(65.0, 2, -3.0), windy(65.0, 2, -3.0);
    const double wind_mps = 9.0;
    windy.surroundings.wind.headwind_mps = wind_mps;
    windy.state.vx_mps -= wind_mps;
    still.hands.stick = windy.hands.stick = 0.1;
    still.fly(20.0);
    windy.fly(20.0);
    const double rounding = 1e-7;  // m, gathered over 2,400 steps from positions of 10 km
    CHECK_NEAR(windy.state.x_m + wind_mps * 20.0, still.state.x_m, rounding);
    CHECK_NEAR(windy.state.z_m, still.state.z_m, rounding);
    CHECK_NEAR(windy.state.pitch_rad, still.state.pitch_rad, 1e-9);
}

TEST_CASE("dynamics: standing on its wheels, the aeroplane rests where spring and weight agree") {
    Flown flown(65.0, 2, -3.0);
    flown.hands = {};
    flown.state = FlightState{};
    flown.state.x_m = 500.0;
    flown.state.z_m = tourer().geometry.wheels_down_m + 0.05;
    flown.state.power = tourer().engine.idle_fraction;
    flown.fly(20.0);
    CHECK_NEAR(wheel_height_m(tourer(), flown.state), -gravity_mps2 / 100.0,
               0.001);  // stiffness 100 a second squared
    CHECK_NEAR(flown.state.vz_mps, 0.0, 1e-6);
    CHECK(std::abs(flown.state.vx_mps) < 0.3);  // idle thrust against the brakes
    CHECK(flown.state.pitch_rad > rad_from_deg(-5.0));
    CHECK(flown.state.pitch_rad < rad_from_deg(5.0));
}

TEST_CASE("dynamics: a hard arrival neither sinks into the ground nor is thrown back into the air for long") {
    Flown flown(65.0, 2, -3.0);
    flown.hands.throttle = 0.0;
    flown.state.x_m = 100.0;
    flown.state.z_m = tourer().geometry.wheels_down_m + 0.5;
    flown.state.vz_mps = -3.0;  // 590 ft/min
    double lowest_m = 1.0;
    for (int i = 0; i < 30 * 120; ++i) {
        flown.fly(tick_s + 1e-9);
        lowest_m = std::fmin(lowest_m, wheel_height_m(tourer(), flown.state));
    }
    CHECK(lowest_m > -0.6);
    CHECK(std::abs(wheel_height_m(tourer(), flown.state)) < 0.15);
    CHECK(flown.state.vx_mps < 15.0);
}

TEST_CASE("dynamics: eye and wheels are where the geometry puts them") {
    FlightState state;
    state.x_m = 10.0;
    state.z_m = 100.0;
    const Geometry& geometry = tourer().geometry;
    CHECK_NEAR(eye_position(tourer(), state).x_m, 10.0 + geometry.eye_forward_m, 1e-12);  // rounding
    CHECK_NEAR(eye_position(tourer(), state).z_m, 100.0 + geometry.eye_up_m, 1e-12);
    CHECK_NEAR(wheel_height_m(tourer(), state), 100.0 - geometry.wheels_down_m, 1e-12);
    state.pitch_rad = pi / 2.0;  // standing on its tail, what was up is behind
    CHECK_NEAR(eye_position(tourer(), state).x_m, 10.0 - geometry.eye_up_m, 1e-12);
    CHECK_NEAR(eye_position(tourer(), state).z_m, 100.0 + geometry.eye_forward_m, 1e-12);
}

TEST_CASE("dynamics: lift is square to the flight through the air, drag against it") {
    Flown flown(65.0, 2, -3.0);
    const FlightForces forces = flown.forces();
    const FlightState rate = rates_of(tourer(), flown.surroundings, flown.hands, flown.state);
    // Put together again from the forces by their definitions.
    const double path = forces.air_path_rad, mass = tourer().mass_kg;
    const double ax = (forces.thrust_n * std::cos(flown.state.pitch_rad) - forces.drag_n * std::cos(path) -
                       forces.lift_n * std::sin(path)) /
                      mass;
    const double az = (forces.thrust_n * std::sin(flown.state.pitch_rad) - forces.drag_n * std::sin(path) +
                       forces.lift_n * std::cos(path)) /
                          mass -
                      9.80665;
    CHECK_NEAR(rate.vx_mps, ax, 1e-12);  // rounding
    CHECK_NEAR(rate.vz_mps, az, 1e-12);
    CHECK_NEAR(forces.alpha_rad, flown.state.pitch_rad - path, 1e-15);
}
