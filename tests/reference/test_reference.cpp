// Our own integration held against two of others, over whole approaches: the same right-hand side, other
// methods, other authors. (SUNDIALS CVODE: Hindmarsh and others; Boost.Odeint: Ahnert and Mulansky.)
#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include "base/units.h"
#include "tests/check.h"
#include "tests/fixtures.h"
#include "tests/reference/integrators.h"

using namespace slopewise;
using namespace slopewise::test;
using namespace slopewise::reference;

namespace {

// The bound that the issue of this check sets, a thousandth of a millimetre. Our own error must stay below
// it, and the libraries' own (their tolerance times some thousand steps) does: it is found by comparing them
// with each other.
constexpr double agreed_m = 1e-6;
constexpr double library_tolerance = 1e-13;

Scenario calm_final(double distance_nm) {
    const Scenario shipped = shipped_scenario("final_calm");
    Lesson lesson = shipped.lesson;
    lesson.start.distance_m = m_from_nm(distance_nm);
    return make_scenario(lesson, shipped.aircraft, shipped.surroundings.runway);
}

// Controls that are held from a tick on, to the next change.
struct Held {
    std::int64_t from_tick;
    ControlPositions controls;
};

std::size_t held_at(const std::vector<Held>& plan, std::int64_t tick) {
    std::size_t at = 0;
    while (at + 1 < plan.size() && plan[at + 1].from_tick <= tick) ++at;
    return at;
}

// The flight from the start to 50 ft wheel height by our own method, one state a second.
struct Flown {
    std::vector<FlightState> each_s;
    std::int64_t ticks = 0;
};
Flown fly_ours(const Scenario& scenario, const std::vector<Held>& plan, int steps_per_tick = 1) {
    Flown flown;
    FlightState state = scenario.start_state;
    while (wheel_height_m(scenario.aircraft, state) > m_from_ft(50.0) && flown.ticks < 60000) {
        if (flown.ticks % 120 == 0) flown.each_s.push_back(state);
        const ControlPositions& hands = plan[held_at(plan, flown.ticks)].controls;
        for (int i = 0; i < steps_per_tick; ++i)
            state = advance(scenario.aircraft, scenario.surroundings, hands, state, tick_s / steps_per_tick);
        ++flown.ticks;
    }
    return flown;
}

template <class Integrator>
std::vector<FlightState> fly_theirs(Integrator&& integrator, const Scenario& scenario,
                                    const std::vector<Held>& plan, std::size_t seconds) {
    std::vector<FlightState> each_s{scenario.start_state};
    double begun_s = 0.0;
    std::size_t held = 0;
    const auto flight = [&] {
        return HeldFlight{&scenario.aircraft, &scenario.surroundings, plan[held].controls, {}};
    };
    integrator.restart(flight(), scenario.start_state);
    while (each_s.size() < seconds) {
        const double now_s = static_cast<double>(each_s.size());
        while (held + 1 < plan.size() && static_cast<double>(plan[held + 1].from_tick) * tick_s <= now_s) {
            const double change_s = static_cast<double>(plan[++held].from_tick) * tick_s;
            const FlightState there = integrator.after(change_s - begun_s);
            integrator.restart(flight(), there);
            begun_s = change_s;
        }
        each_s.push_back(now_s > begun_s ? integrator.after(now_s - begun_s) : each_s.back());
    }
    return each_s;
}

double farthest_m(const std::vector<FlightState>& a, const std::vector<FlightState>& b) {
    REQUIRE(a.size() == b.size());
    double most = 0.0;
    for (std::size_t i = 0; i < a.size(); ++i)
        most = std::max(most, std::hypot(a[i].x_m - b[i].x_m, a[i].z_m - b[i].z_m));
    return most;
}

void check_agreement(const Scenario& scenario, const std::vector<Held>& plan, const std::string& what) {
    const Flown ours = fly_ours(scenario, plan);
    const std::size_t seconds = ours.each_s.size();
    REQUIRE(seconds > 60);
    const std::vector<FlightState> cvode = fly_theirs(Cvode(library_tolerance), scenario, plan, seconds);
    const std::vector<FlightState> odeint = fly_theirs(Odeint(library_tolerance), scenario, plan, seconds);
    const double of_libraries = farthest_m(cvode, odeint);
    CHECK(of_libraries < agreed_m / 10.0);  // else the comparison below would say nothing of us
    CHECK(farthest_m(ours.each_s, cvode) < agreed_m);
    CHECK(farthest_m(ours.each_s, odeint) < agreed_m);
    MESSAGE(what << ", " << seconds << " s: from CVODE " << farthest_m(ours.each_s, cvode)
                 << " m, from Odeint " << farthest_m(ours.each_s, odeint) << " m, these from each other "
                 << of_libraries << " m");
}

}  // namespace

TEST_CASE(
    "reference: a calm approach from 5 NM with fixed controls is CVODE's and Odeint's to a micrometre") {
    const Scenario scenario = calm_final(5.0);
    check_agreement(scenario, {{0, scenario.start_trim.controls}}, "5 NM");
}

TEST_CASE("reference: so is one from 3 NM, in every shipped aircraft") {
    for (const Aircraft& aircraft : shipped().aircraft) {
        CAPTURE(aircraft.id);
        Lesson lesson = calm_final(3.0).lesson;
        lesson.start.cas_mps = lesson.target_cas_mps = aircraft.approach_speed_mps;
        lesson.start.flap = landing_flap(aircraft);
        const Scenario scenario = make_scenario(lesson, aircraft, plain_runway());
        check_agreement(scenario, {{0, scenario.start_trim.controls}}, aircraft.id);
    }
}

TEST_CASE("reference: so is one whose controls change at a tick, where the libraries are started anew") {
    const Scenario scenario = calm_final(3.0);
    std::vector<Held> plan{{0, scenario.start_trim.controls}};
    ControlPositions hands = scenario.start_trim.controls;
    hands.throttle += 0.08;  // as one does who is low
    plan.push_back({1201, hands});
    hands.throttle -= 0.12;
    hands.stick = 0.02;
    plan.push_back({3607, hands});
    check_agreement(scenario, plan, "3 NM, two changes");
}

TEST_CASE("reference: against CVODE, halving our step makes the error sixteen times smaller") {
    // A whole approach with the phugoid awake. A tick errs by less than CVODE itself may, so the order is
    // shown with longer steps: 12, 6 and 3 ticks.
    const Scenario scenario = calm_final(3.0);
    ControlPositions hands = scenario.start_trim.controls;
    hands.throttle += 0.05;
    hands.stick = 0.08;
    constexpr std::int64_t ticks = 120 * 120;
    Cvode cvode(library_tolerance);
    cvode.restart({&scenario.aircraft, &scenario.surroundings, hands, {}}, scenario.start_state);
    const FlightState theirs = cvode.after(static_cast<double>(ticks) * tick_s);
    REQUIRE(wheel_height_m(scenario.aircraft, theirs) > 15.0);  // in the smooth: above ground effect
    const auto error_m = [&](int ticks_per_step) {
        FlightState state = scenario.start_state;
        for (std::int64_t i = 0; i < ticks / ticks_per_step; ++i)
            state = advance(scenario.aircraft, scenario.surroundings, hands, state, ticks_per_step * tick_s);
        return std::hypot(state.x_m - theirs.x_m, state.z_m - theirs.z_m);
    };
    const double coarse = error_m(12), fine = error_m(6), finest = error_m(3);
    // An order of 4 to within 0.3: the next term still shows at a step of a tenth of a second.
    CHECK_NEAR(std::log2(coarse / fine), 4.0, 0.3);
    CHECK_NEAR(std::log2(fine / finest), 4.0, 0.3);
    MESSAGE("orders " << std::log2(coarse / fine) << ", " << std::log2(fine / finest) << "; errors " << coarse
                      << ", " << fine << ", " << finest << " m; at a tick " << error_m(1) << " m");
}

TEST_CASE(
    "reference: energy closes over a whole approach: what is gained is the work of thrust less that of "
    "drag") {
    const Scenario scenario = calm_final(5.0);
    const Aircraft& aircraft = scenario.aircraft;
    const ControlPositions& hands = scenario.start_trim.controls;
    const auto energy_j = [&](const FlightState& s) {
        return aircraft.mass_kg * (0.5 * (s.vx_mps * s.vx_mps + s.vz_mps * s.vz_mps) + gravity_mps2 * s.z_m);
    };
    const auto working_w = [&](const FlightState& s) {
        const FlightForces forces = forces_at(aircraft, scenario.surroundings, hands, s);
        return forces.thrust_n * (s.vx_mps * forces.body_x + s.vz_mps * forces.body_z) -
               forces.drag_n * forces.tas_mps;
    };
    FlightState state = scenario.start_state;
    double work_j = 0.0, moved_j = 0.0;
    while (wheel_height_m(aircraft, state) > m_from_ft(50.0)) {  // Simpson's rule over each tick
        const auto later = [&](double share) {
            return advance(aircraft, scenario.surroundings, hands, state, share * tick_s);
        };
        const FlightState next = later(1.0);
        const double step_j =
            (working_w(state) + 4.0 * working_w(later(0.5)) + working_w(next)) * tick_s / 6.0;
        work_j += step_j;
        moved_j += std::abs(step_j);
        state = next;
    }
    const double gained_j = energy_j(state) - energy_j(scenario.start_state);
    CHECK(gained_j < -4e6);  // 460 m of height given away
    // Rule and method err far less; 30,000 sums of doubles, each rounded at 1e-16, bound what can be seen.
    CHECK_NEAR((work_j - gained_j) / moved_j, 0.0, 3e-12);
    MESSAGE("energy: " << gained_j << " J gained, work differs by " << work_j - gained_j << " J");
}
