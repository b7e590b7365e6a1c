// Steady flight in closed form, for a textbook aeroplane, against the trim solver and the equations of
// motion.
#include <cmath>

#include "base/exact_math.h"
#include "base/units.h"
#include "flight/aerodynamics.h"
#include "flight/trim.h"
#include "tests/check.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

constexpr double weight_n = 13127.5, area_m2 = 16.165, span_m = 10.912, zero_lift_drag = 0.025, oswald = 0.8;
constexpr double aspect_ratio = span_m * span_m / area_m2;

double drag_of(double lift) { return zero_lift_drag + lift * lift / (pi * oswald * aspect_ratio); }

// Lift coefficient of the flattest glide: where zero-lift and induced drag are equal.
const double best_lift = std::sqrt(zero_lift_drag * pi * oswald * aspect_ratio);

// The steady glide at a lift coefficient in air of a density: tan(angle) = CD/CL, V^2 = 2 W cos(angle)/(rho S
// CL).
struct Glide {
    double angle_rad, tas_mps;
};
Glide glide(double lift, double density) {
    const double angle_rad = std::atan(drag_of(lift) / lift);
    return {angle_rad, std::sqrt(2.0 * weight_n * std::cos(angle_rad) / (density * area_m2 * lift))};
}

// Rates of change of a trimmed state are the proof that it is steady.
void check_steady(const Aircraft& aircraft, const Surroundings& surroundings, const TrimWanted& wanted,
                  const TrimState& trim) {
    const FlightState rates =
        rates_of(aircraft, surroundings, trim.controls, trimmed_start(wanted, trim, -5000.0));
    CHECK_NEAR(rates.vx_mps, 0.0, 1e-9);  // m/s2: what halving intervals to the last bit leaves
    CHECK_NEAR(rates.vz_mps, 0.0, 1e-9);
    CHECK_NEAR(rates.pitch_rad, 0.0, 1e-12);
    CHECK_NEAR(rates.pitch_rate_radps, 0.0, 1e-9);
    CHECK_NEAR(rates.power, 0.0, 1e-12);
    CHECK_NEAR(rates.flap, 0.0, 1e-12);
}

}  // namespace

TEST_CASE("steady flight: the flattest glide of the textbook aeroplane is 4.2 degrees at a ratio of 13.6") {
    // Anderson, Introduction to Flight, Examples 6.7 and 6.12 (13.62 by its graph) and 12.81 by graph for
    // (CL^1.5/CD)max; tolerances as a graph is read.
    const Aircraft aircraft = textbook_aircraft(best_lift);
    const Coefficients best = coefficients(aircraft, 0.0, flap_effect(aircraft, 0.0), 500.0);
    CHECK_NEAR(best.lift, 0.680, 0.0005);
    CHECK_NEAR(best.lift / best.drag, 13.61, 0.05);
    CHECK_NEAR(deg_from_rad(std::atan(best.drag / best.lift)), 4.2, 0.02);

    const double slowest_sink_lift =
        best_lift * std::sqrt(3.0);  // induced drag three times the zero-lift drag
    const double alpha_rad = (slowest_sink_lift - best_lift) / 5.0;
    const Coefficients slow = coefficients(aircraft, alpha_rad, flap_effect(aircraft, 0.0), 500.0);
    CHECK_NEAR(std::pow(slow.lift, 1.5) / slow.drag, 12.81, 0.05);
}

TEST_CASE("steady flight: gliding speeds of the textbook example come out with its lift coefficient") {
    // Anderson, Example 6.9: 53.13 m/s at a density of 0.905 (3,048 m) and 47.03 m/s at 1.155 (609.6 m), both
    // with a lift coefficient of 0.634 read from a table (the flattest glide is at 0.680; the book's
    // is 13.57).
    CHECK_NEAR(glide(0.634, 0.905).tas_mps, 53.13, 0.05);  // the book rounds its cosine and inputs
    CHECK_NEAR(glide(0.634, 1.155).tas_mps, 47.03, 0.05);
    CHECK_NEAR(0.634 / drag_of(0.634), 13.57, 0.01);
}

TEST_CASE("steady flight: on the glide's path at the glide's speed the trim solver wants no power at all") {
    for (const double lift : {0.4, 0.634, best_lift, 1.0, 1.3}) {
        CAPTURE(lift);
        const Aircraft aircraft = textbook_aircraft(lift);
        const Surroundings surroundings = still_air();
        const double height_m = 609.6;
        const Air air = air_at(surroundings.air, height_m);
        const Glide expected = glide(lift, air.density_kgpm3);
        const TrimWanted wanted{cas_from_tas_mps(expected.tas_mps, air), 0, -expected.angle_rad + 1e-9,
                                height_m};
        const TrimState trim = solve_trim(aircraft, surroundings, wanted);
        CHECK(trim.flyable);  // a hair flatter than the glide, so that the power wanted is a hair above none
        CHECK_NEAR(trim.alpha_rad, 0.0, 1e-8);
        CHECK_NEAR(trim.power, 0.0,
                   1e-5);  // W V 1e-9 over the rated power, and the fade-in of thrust from 1 W
        CHECK_NEAR(trim.tas_mps, expected.tas_mps, 1e-9);
        CHECK_NEAR(trim.sink_mps, expected.tas_mps * std::sin(expected.angle_rad), 1e-6);
    }
}

TEST_CASE("steady flight: a glide with the engine stopped holds the closed form's angle and speed") {
    // Flown for half a minute from a state built by hand. The density grows on the way down and the speed
    // falls with its root, so the speed is compared with the closed form at the height reached, and the angle
    // is flatter by what that slowing gives back: its deceleration over gravity (0.04 degrees).
    const Aircraft aircraft = textbook_aircraft(best_lift);
    const Surroundings surroundings = still_air();
    FlightState state;
    state.z_m = 1000.0;
    const Glide start = glide(best_lift, air_at(surroundings.air, state.z_m).density_kgpm3);
    state.vx_mps = start.tas_mps * std::cos(start.angle_rad);
    state.vz_mps = -start.tas_mps * std::sin(start.angle_rad);
    state.pitch_rad = -start.angle_rad;
    for (int i = 0; i < 30 * 120; ++i) state = advance(aircraft, surroundings, {}, state, tick_s);
    const auto density_at = [&](double height_m) { return air_at(surroundings.air, height_m).density_kgpm3; };
    const Glide end = glide(best_lift, density_at(state.z_m));
    const double tas_mps = std::hypot(state.vx_mps, state.vz_mps);
    const double growth_per_m =
        (density_at(state.z_m - 1.0) - density_at(state.z_m + 1.0)) / 2.0 / density_at(state.z_m);
    const double slowing_mps2 = 0.5 * tas_mps * growth_per_m * -state.vz_mps;
    CHECK(state.z_m < 930.0);
    CHECK_NEAR(tas_mps, end.tas_mps, 0.02);  // the phugoid that the sudden start leaves
    CHECK_NEAR(deg_from_rad(std::atan2(-state.vz_mps, state.vx_mps)),
               deg_from_rad(end.angle_rad - slowing_mps2 / gravity_mps2), 0.01);  // likewise
}

TEST_CASE("steady flight: level flight takes the power that drag and momentum theory say") {
    // With the body along the flight, thrust is drag: D = q S CD, T (V + v) = efficiency x P, T = 2 rho A v
    // (V + v).
    const Surroundings surroundings = still_air();
    const double height_m = 500.0;
    const Air air = air_at(surroundings.air, height_m);
    for (const double tas_mps : {34.0, 45.0, 60.0, 70.0}) {
        CAPTURE(tas_mps);
        const double dynamic_n = 0.5 * air.density_kgpm3 * tas_mps * tas_mps * area_m2;
        const double lift = weight_n / dynamic_n;
        const Aircraft aircraft = textbook_aircraft(lift);
        const TrimWanted wanted{cas_from_tas_mps(tas_mps, air), 0, 0.0, height_m};
        const TrimState trim = solve_trim(aircraft, surroundings, wanted);
        CHECK(trim.flyable);

        const double drag_n = dynamic_n * drag_of(lift);
        const double disc_m2 = pi / 4.0 * 1.9 * 1.9;
        const double slip_mps =
            0.5 * (std::sqrt(tas_mps * tas_mps + 2.0 * drag_n / (air.density_kgpm3 * disc_m2)) - tas_mps);
        const double sigma = density_ratio(air);
        const double available_w = 230.0 * 746.0 * 0.8 * (sigma - (1.0 - sigma) / 7.55);
        CHECK_NEAR(trim.power, drag_n * (tas_mps + slip_mps) / available_w,
                   1e-9);  // halving to the last bits
        CHECK_NEAR(trim.pitch_rad, 0.0, 1e-9);
        CHECK(trim.sink_mps == 0.0);
        check_steady(aircraft, surroundings, wanted, trim);
    }
}

TEST_CASE("steady flight: level flight trimmed and let go stays level at its speed for a minute") {
    const Aircraft aircraft = textbook_aircraft(0.5);
    const Surroundings surroundings = still_air();
    const TrimWanted wanted{50.0, 0, 0.0, 500.0};
    const TrimState trim = solve_trim(aircraft, surroundings, wanted);
    FlightState state = trimmed_start(wanted, trim, 0.0);
    for (int i = 0; i < 60 * 120; ++i) state = advance(aircraft, surroundings, trim.controls, state, tick_s);
    CHECK_NEAR(state.z_m, 500.0, 1e-6);  // rounding, gathered over 7,200 steps
    CHECK_NEAR(state.vx_mps, trim.tas_mps, 1e-8);
    CHECK_NEAR(state.x_m, 60.0 * trim.tas_mps, 1e-5);
}

TEST_CASE("steady flight: the slowest speed is that of the greatest lift coefficient") {
    // Gliding without power: V^2 = 2 W cos(angle) / (rho S CLmax). A ten-thousandth slower is below the
    // stall; as much faster is not (on that path it would want a little less power than none).
    const Aircraft aircraft = textbook_aircraft(0.3);
    const Surroundings surroundings = still_air();
    const double height_m = 800.0;
    const Air air = air_at(surroundings.air, height_m);
    const Glide stalling = glide(1.6, air.density_kgpm3);
    const auto trim_at = [&](double factor) {
        const TrimWanted wanted{cas_from_tas_mps(factor * stalling.tas_mps, air), 0, -stalling.angle_rad,
                                height_m};
        return solve_trim(aircraft, surroundings, wanted);
    };
    CHECK(trim_at(1.0001).reason == "idle is still too much power");
    CHECK(trim_at(0.9999).reason == "the speed is below the stall");
    CHECK(!trim_at(0.9999).flyable);
}

TEST_CASE("steady flight: the stall speed of every shipped aircraft and flap is the textbook formula's") {
    // Vs = sqrt(2 W / (rho0 S CLmax)).
    for (const Aircraft& aircraft : shipped().aircraft) {
        for (int flap = 0; flap < aircraft.flap_count; ++flap) {
            const double max_lift = aircraft.flaps[static_cast<std::size_t>(flap)].max_lift;
            const double load_n = aircraft.mass_kg * 9.80665;
            CHECK_NEAR(stall_speed_mps(aircraft, flap),
                       std::sqrt(2.0 * load_n / (1.225 * aircraft.wing.area_m2 * max_lift)), 1e-4);
            // 1.225 is the rounded sea-level density: one part in a million
        }
    }
}

TEST_CASE("steady flight: slowing with closed throttle, the flown stall comes at the formula's speed") {
    // The stick comes back slowly at a level near sea level; at the angle of greatest lift the equivalent
    // airspeed is the stall speed times the root of the load factor then.
    const Aircraft& aircraft = tourer();
    const Surroundings surroundings = still_air();
    for (int flap = 0; flap < aircraft.flap_count; ++flap) {
        CAPTURE(flap);
        const TrimWanted wanted{mps_from_kt(70.0), flap, rad_from_deg(-3.0), 600.0};
        const TrimState trim = solve_trim(aircraft, surroundings, wanted);
        FlightState state = trimmed_start(wanted, trim, -9000.0);
        ControlPositions hands = trim.controls;
        hands.throttle = 0.0;
        const double stalling = stall_alpha_rad(aircraft, flap_effect(aircraft, flap));
        bool stalled = false;
        for (int i = 0; i < 60 * 120 && !stalled; ++i) {
            hands.stick += 0.03 * tick_s;
            state = advance(aircraft, surroundings, hands, state, tick_s);
            const FlightForces forces = forces_at(aircraft, surroundings, hands, state);
            if (forces.alpha_rad < stalling) continue;
            stalled = true;
            const double load_factor = forces.lift_n / (aircraft.mass_kg * gravity_mps2);
            const double eas_mps = forces.tas_mps * std::sqrt(density_ratio(forces.air));
            CHECK_NEAR(load_factor, 1.0, 0.1);  // a gentle stall
            // The lift curve is flat there: a tick beyond its top costs nothing measurable.
            CHECK_NEAR(eas_mps, stall_speed_mps(aircraft, flap) * std::sqrt(load_factor), 1e-3);
        }
        CHECK(stalled);
    }
}
