// Motion in closed form: the phugoid, the balance of energy, the order of the integrator.
#include <cmath>
#include <vector>

#include "base/exact_math.h"
#include "base/units.h"
#include "flight/aerodynamics.h"
#include "flight/propeller.h"
#include "flight/trim.h"
#include "tests/check.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

// No drag (no zero-lift drag, and a span so great that induced drag is nothing), no power, and an attitude so
// stiff that the angle of attack stands still: all that Lanchester's phugoid assumes.
Aircraft drag_free_aircraft() {
    Aircraft aircraft = textbook_aircraft(0.7);
    aircraft.wing.zero_lift_drag = 0.0;
    aircraft.wing.span_m = 1e6;
    aircraft.engine.idle_fraction = 0.0;
    // The attitude lags behind a turning flight path by 2 damping / frequency of its rate: here half a
    // millisecond.
    aircraft.pitch.frequency_radps = 200.0;
    aircraft.pitch.damping = 0.05;
    return aircraft;
}

struct Phugoid {
    double period_s = 0.0;
    double tas_mps = 0.0;
    double height_m = 0.0;
};

// Lets the drag-free aeroplane go a hair too fast and times ten swings by the vertical speed's rises through
// zero.
Phugoid fly_phugoid(double tas_mps, double disturbance) {
    Aircraft aircraft = drag_free_aircraft();
    const Surroundings surroundings = still_air();
    const double height_m = 1500.0;
    const double density = air_at(surroundings.air, height_m).density_kgpm3;
    aircraft.pitch.reference_speed_mps = tas_mps;
    aircraft.wing.lift_at_zero = 2.0 * 13127.5 / (density * tas_mps * tas_mps * aircraft.wing.area_m2);
    aircraft.flaps[0].max_lift = 10.0 * aircraft.wing.lift_at_zero;
    FlightState state;
    state.z_m = height_m;
    state.vx_mps = tas_mps * (1.0 + disturbance);
    const double dt_s = 1.0 / 1200.0;  // the stiff attitude wants short steps
    double first_s = 0.0;
    int rises = 0;
    for (int i = 0; rises < 11; ++i) {
        const FlightState next = advance(aircraft, surroundings, {}, state, dt_s);
        if (state.vz_mps < 0.0 && next.vz_mps >= 0.0) {
            const double at_s = (i + state.vz_mps / (state.vz_mps - next.vz_mps)) * dt_s;
            if (rises++ == 0) first_s = at_s;
            if (rises == 11) return {(at_s - first_s) / 10.0, tas_mps, height_m};
        }
        state = next;
    }
    return {};
}

// Damping ratio of the textbook aeroplane's phugoid with fixed angle of attack, from three swings of its path
// angle. Each half swing, from one extreme to the next, is the one before times exp(-zeta pi / sqrt(1 -
// zeta^2)).
double measured_damping(double lift, double disc_diameter_m, double path_rad) {
    Aircraft aircraft = textbook_aircraft(lift);
    aircraft.engine.disc_diameter_m = disc_diameter_m;
    aircraft.engine.rated_power_w = 1e8;  // no limit
    aircraft.pitch.frequency_radps = 200.0;
    aircraft.pitch.damping = 0.05;
    const Surroundings surroundings = still_air();
    FlightState state;
    state.z_m = 3000.0;
    const double density = air_at(surroundings.air, state.z_m).density_kgpm3;
    const double tas_mps = std::sqrt(2.0 * 13127.5 * std::cos(path_rad) / (density * 16.165 * lift));
    const double dynamic_n = 0.5 * density * tas_mps * tas_mps * aircraft.wing.area_m2;
    const double drag_n = dynamic_n * coefficients(aircraft, 0.0, flap_effect(aircraft, 0.0), 3000.0).drag;
    const double thrust_n = drag_n + 13127.5 * std::sin(path_rad);
    ControlPositions hands;
    if (path_rad == 0.0)
        hands.throttle = power_fraction_for_thrust(aircraft.engine, thrust_n, tas_mps, density);
    state.power = hands.throttle;
    state.vx_mps = 1.01 * tas_mps * std::cos(path_rad);
    state.vz_mps = 1.01 * tas_mps * std::sin(path_rad);
    state.pitch_rad = path_rad;

    std::vector<double> extremes;
    double before = 0.0, middle = 0.0;
    for (int i = 0; i < 120 * 1200 && extremes.size() < 7; ++i) {
        state = advance(aircraft, surroundings, hands, state, 1.0 / 1200.0);
        const double angle = std::atan2(state.vz_mps, state.vx_mps);
        // The first second lets the stiff attitude come to rest.
        if (i > 1200 && (middle - before) * (angle - middle) < 0.0) extremes.push_back(middle);
        before = middle;
        middle = angle;
    }
    if (extremes.size() < 7) return NAN;
    const double first = std::abs(extremes[1] - extremes[0]), last = std::abs(extremes[6] - extremes[5]);
    const double decrement = std::log(first / last) / 5.0;
    return decrement / std::sqrt(pi * pi + decrement * decrement);
}

// Energy of motion and height, J.
double energy_j(const Aircraft& aircraft, const FlightState& state) {
    const double speed_squared = state.vx_mps * state.vx_mps + state.vz_mps * state.vz_mps;
    return aircraft.mass_kg * (gravity_mps2 * state.z_m + 0.5 * speed_squared);
}

// Power of thrust and of drag, W, in still air. Lift and weight's share need no part in it: lift is square to
// the motion, and weight's work is the height in energy_j.
struct Powers {
    double thrust_w, drag_w;
};
Powers powers_of(const Aircraft& aircraft, const Surroundings& surroundings, const ControlPositions& controls,
                 const FlightState& state) {
    const FlightForces forces = forces_at(aircraft, surroundings, controls, state);
    const double along_body =
        state.vx_mps * exact::cos(state.pitch_rad) + state.vz_mps * exact::sin(state.pitch_rad);
    return {forces.thrust_n * along_body, -forces.drag_n * forces.tas_mps};
}

}  // namespace

TEST_CASE("motion: without drag the phugoid's period is pi times root two times speed over gravity") {
    // Lanchester's result (formula from memory; it follows from the point-mass equations): 13.98 s at 60
    // kt, 15.15 at 65, 16.31 at 70, 23.31 at 100. Half a percent is asked for. Most of what is left is air
    // that thins with height: it pulls the aeroplane back to its level and shortens the period by the root of
    // 1 + V^2/(2 g H), H being the height over which density falls e-fold (0.26 percent at 65 kt). With that
    // the agreement is ten times better.
    const struct {
        double tas_kt, period_s;
    } rows[] = {{60.0, 13.98}, {65.0, 15.15}, {70.0, 16.31}, {100.0, 23.31}};
    for (const auto& row : rows) {
        CAPTURE(row.tas_kt);
        const Phugoid flown = fly_phugoid(mps_from_kt(row.tas_kt), 0.002);
        const double lanchester_s = pi * std::sqrt(2.0) * flown.tas_mps / gravity_mps2;
        CHECK_NEAR(lanchester_s, row.period_s, 0.01);
        const AirColumn standard_column = air_column(Weather{});
        const double gradient = (air_at(standard_column, flown.height_m + 1.0).density_kgpm3 -
                                 air_at(standard_column, flown.height_m - 1.0).density_kgpm3) /
                                2.0;
        const double scale_m = -air_at(standard_column, flown.height_m).density_kgpm3 / gradient;
        const double thinning = 1.0 + flown.tas_mps * flown.tas_mps / (2.0 * gravity_mps2 * scale_m);
        if (row.tas_kt <= 70.0) CHECK_NEAR(flown.period_s / lanchester_s, 1.0, 0.005);
        CHECK_NEAR(flown.period_s / (lanchester_s / std::sqrt(thinning)), 1.0, 0.0005);
        MESSAGE("phugoid at " << row.tas_kt << " kt: " << flown.period_s << " s, Lanchester " << lanchester_s
                              << " s");
    }
}

TEST_CASE("motion: with drag the phugoid dies away as the ratio of lift to drag says") {
    // Damping ratio 1/(sqrt2 L/D) in level flight at constant thrust and 3/(2 sqrt2 L/D) at constant power;
    // so follows from m V' = T - D - W sin(angle), m V angle' = L - W cos(angle) with the angle of attack
    // fixed. The same 3/2 holds in a glide, whose slope turns the path back. 3 percent: the swings are not
    // infinitely small, air thins. A tiny disc moves so much faster than the aeroplane that speed does not
    // change its thrust; a huge one wastes nothing, so that its thrust is power over speed.
    const double lift = 0.680,
                 lift_over_drag = lift / (0.025 + lift * lift / (pi * 0.8 * 10.912 * 10.912 / 16.165));
    const double basic = 1.0 / (std::sqrt(2.0) * lift_over_drag);
    const struct {
        std::string name;
        double disc_diameter_m, path_rad, expected;
    } rows[] = {{"constant thrust", 0.01, 0.0, basic},
                {"constant power", 1000.0, 0.0, 1.5 * basic},
                {"glide", 1.9, -std::atan(1.0 / lift_over_drag), 1.5 * basic}};
    for (const auto& row : rows) {
        CAPTURE(row.name);
        const double damping = measured_damping(lift, row.disc_diameter_m, row.path_rad);
        CHECK_NEAR(damping / row.expected, 1.0, 0.03);
        MESSAGE("phugoid damping ratio " << damping << ", closed form " << row.expected);
    }
}

TEST_CASE(
    "motion: the work of thrust and drag is the change of energy, in a flight with every control moving") {
    // Work is integrated by Simpson's rule over pairs of steps of 1/480 s, short so that its own error, which
    // goes with the fourth power of the step, stays below the millionth that is asked for.
    const Aircraft& aircraft = tourer();
    const Surroundings surroundings = still_air();
    const TrimWanted wanted{mps_from_kt(75.0), 0, rad_from_deg(-2.0), 900.0};
    const TrimState trim = solve_trim(aircraft, surroundings, wanted);
    FlightState state = trimmed_start(wanted, trim, -12000.0);
    const double start_j = energy_j(aircraft, state);
    const double dt_s = 1.0 / 480.0;
    double work_j = 0.0, moved_j = 0.0;
    for (int second = 0; second < 60; ++second) {
        ControlPositions hands = trim.controls;
        hands.stick = 0.08 * ((second * 7) % 5 - 2);
        hands.throttle = second % 20 < 6 ? 0.0 : (second % 20 < 12 ? 1.0 : 0.4);
        hands.flap = second < 20 ? 0 : (second < 40 ? 2 : 1);
        for (int i = 0; i < 240; ++i) {
            const FlightState middle = advance(aircraft, surroundings, hands, state, dt_s);
            const FlightState next = advance(aircraft, surroundings, hands, middle, dt_s);
            const Powers a = powers_of(aircraft, surroundings, hands, state);
            const Powers b = powers_of(aircraft, surroundings, hands, middle);
            const Powers c = powers_of(aircraft, surroundings, hands, next);
            const double thrust_j = (a.thrust_w + 4.0 * b.thrust_w + c.thrust_w) * dt_s / 3.0;
            const double drag_j = (a.drag_w + 4.0 * b.drag_w + c.drag_w) * dt_s / 3.0;
            work_j += thrust_j + drag_j;
            moved_j += std::abs(thrust_j) + std::abs(drag_j);
            state = next;
        }
    }
    const double change_j = energy_j(aircraft, state) - start_j;
    CHECK(state.z_m > 100.0);  // never near the ground, whose strut would do work too
    CHECK(std::abs(change_j) > 1e5);
    CHECK_NEAR((work_j - change_j) / moved_j, 0.0, 1e-6);
    MESSAGE("energy: " << work_j - change_j << " J of " << moved_j << " J moved");
}

TEST_CASE("motion: halving the step makes the error sixteen times smaller, as a fourth-order method must") {
    const Aircraft& aircraft = tourer();
    const Surroundings surroundings = still_air();
    const TrimWanted wanted{mps_from_kt(65.0), 2, rad_from_deg(-3.0), 900.0};
    const TrimState trim = solve_trim(aircraft, surroundings, wanted);
    ControlPositions hands = trim.controls;
    hands.stick = 0.1;  // held: what is integrated is smooth
    hands.throttle = 0.8;
    const auto flown = [&](int steps_per_s) {
        FlightState state = trimmed_start(wanted, trim, -9000.0);
        for (int i = 0; i < 8 * steps_per_s; ++i)
            state = advance(aircraft, surroundings, hands, state, 1.0 / steps_per_s);
        return state;
    };
    const FlightState best = flown(1280);
    const auto error_at = [&](int steps_per_s) {
        const FlightState state = flown(steps_per_s);
        return std::hypot(state.x_m - best.x_m, state.z_m - best.z_m);
    };
    const double coarse = error_at(10), fine = error_at(20), finest = error_at(40);
    CHECK_NEAR(std::log2(coarse / fine), 4.0, 0.3);  // the next order still shows at steps as long as these
    CHECK_NEAR(std::log2(fine / finest), 4.0, 0.3);
    CHECK(error_at(120) < 1e-6);  // m, after 8 s: the tick's own error
    MESSAGE("step halving: orders " << std::log2(coarse / fine) << ", " << std::log2(fine / finest)
                                    << "; error at 120 Hz " << error_at(120) << " m");
}
