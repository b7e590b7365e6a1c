// Whatever the aeroplane, the air and the hands do, the flight stays finite and within bounds.
#include <algorithm>
#include <cmath>

#include "base/units.h"
#include "tests/check.h"
#include "tests/fixtures.h"
#include "tests/random_scenarios.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

// Bounds that nothing physical breaks in a flight of ten seconds from under 600 m: 60 m/s at the start, all
// its height traded for speed, the engine's power for ten seconds on the lightest of them (1,000 J/kg) and a
// storm of 40 m/s come to less than 200 m/s; an arrival at 100 m/s is stopped by strut and friction within 5
// m of the surface; and the air damps a tumble to a few turns.
bool within_bounds(const Scenario& scenario, const FlightState& flight) {
    const double speed_mps = std::hypot(flight.vx_mps, flight.vz_mps);
    const double ground_m = ground_height_m(scenario.surroundings.runway, flight.x_m);
    return std::isfinite(flight.x_m) && std::isfinite(flight.z_m) && std::isfinite(speed_mps) &&
           std::isfinite(flight.pitch_rad) && std::isfinite(flight.pitch_rate_radps) && speed_mps < 200.0 &&
           flight.z_m > ground_m - 5.0 && flight.z_m < 2000.0 && std::abs(flight.pitch_rad) < 4.0 * pi &&
           std::abs(flight.pitch_rate_radps) < 20.0 && flight.power >= 0.0 && flight.power <= 1.0 &&
           flight.flap >= -1e-9 && flight.flap <= landing_flap(scenario.aircraft) + 1e-9;
}

// What is seen and felt is within what can be shown.
bool sensible(const Scenario& scenario, const Attempt& attempt) {
    const Sight sight = sight_of(scenario, attempt);
    const FlightForces forces = forces_now(scenario, attempt);
    return std::isfinite(sight.path_error_rad) && std::isfinite(sight.cas_mps) && sight.cas_mps >= 0.0 &&
           sight.white_count >= -1 && sight.white_count <= scenario.lights.pattern &&
           std::isfinite(forces.lift_n) && std::isfinite(forces.thrust_n) && forces.drag_n >= 0.0 &&
           std::isfinite(forces.wheel_load_n) && forces.wheel_load_n >= 0.0;
}

// What the flights came to, so that a run which visits nothing cannot pass.
struct Visited {
    int on_ground = 0, stalled = 0, turbulent = 0, failed = 0, broken = 0;
};

// From three to ten seconds, with other controls every second.
void fly_randomly(Random& random, const Scenario& scenario, Visited& visited) {
    Attempt attempt = begin_attempt(scenario);
    const int seconds = 3 + static_cast<int>(next_bits(random) % 8);
    bool sound = true, stall = false;
    for (int second = 0; second < seconds && sound && !attempt.at_rest; ++second) {
        const Controls controls = random_controls(random);
        for (int i = 0; i < 120 && sound; ++i) {
            tick(scenario, attempt, controls);
            sound = within_bounds(scenario, attempt.flight);
        }
        sound = sound && sensible(scenario, attempt);
        stall = stall || stall_warning(scenario, attempt);
    }
    visited.on_ground += attempt.on_ground;
    visited.stalled += stall;
    visited.turbulent += scenario.lesson.turbulence_w20_mps > 0.0;
    visited.failed += std::any_of(attempt.conditions.failed.begin(), attempt.conditions.failed.end(),
                                  [](bool failed) { return failed; });
    if (sound || visited.broken++ >= 5) return;
    const FlightState& end = attempt.flight;
    FAIL_CHECK("in a " << scenario.aircraft.id << ", tick " << attempt.tick << ": x " << end.x_m << ", z "
                       << end.z_m << ", v " << end.vx_mps << ", " << end.vz_mps << ", pitch " << end.pitch_rad
                       << ", rate " << end.pitch_rate_radps << ", power " << end.power << ", flap "
                       << end.flap);
}

}  // namespace

TEST_CASE("random flights: random aircraft in random air with random hands stay finite and bounded") {
    Random random{20240501};
    Visited visited;
    for (int flight = 0; flight < random_flight_count; ++flight) {
        Scenario scenario = random_scenario(random);
        if (flight % 3 == 0) {  // some start just above the runway, where the ground is near
            scenario.start_state.x_m = -100.0;
            scenario.start_state.z_m = random_between(random, 3.0, 25.0);
        }
        fly_randomly(random, scenario, visited);
    }
    CHECK(visited.broken == 0);
    CHECK(visited.on_ground > random_flight_count / 20);
    CHECK(visited.stalled > random_flight_count / 4);
    CHECK(visited.turbulent > random_flight_count / 4);
    CHECK(visited.failed > random_flight_count / 4);
    MESSAGE(random_flight_count << " random flights: " << visited.on_ground << " ended on the ground, "
                                << visited.stalled << " came to the stall warning, " << visited.turbulent
                                << " in turbulence, " << visited.failed << " with something failed");
}
