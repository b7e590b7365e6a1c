// Whatever the hands do, the flight stays finite and within bounds.
#include <cmath>

#include "base/random.h"
#include "base/units.h"
#include "lesson/approach_choice.h"
#include "tests/check.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

// Bounds that nothing physical breaks in half a minute: straight down the drag of this aeroplane holds it to
// under 190 m/s with full power (drag coefficient 0.034, 1,100 kg, 16.3 m2), a climb of a minute takes it to
// no 3,000 m, the strut stops it within 5 m of the surface, and the air damps a tumble to a few turns.
bool within_bounds(const FlightState& flight) {
    const double speed_mps = std::hypot(flight.vx_mps, flight.vz_mps);
    return std::isfinite(flight.x_m) && std::isfinite(flight.z_m) && std::isfinite(speed_mps) &&
           std::isfinite(flight.pitch_rad) && std::isfinite(flight.pitch_rate_radps) && speed_mps < 200.0 &&
           flight.z_m > -5.0 && flight.z_m < 3000.0 && std::abs(flight.pitch_rad) < 4.0 * pi &&
           std::abs(flight.pitch_rate_radps) < 20.0 && flight.power >= 0.0 && flight.power <= 1.0 &&
           flight.flap >= -1e-9 && flight.flap <= 2.0 + 1e-9;
}

Controls random_controls(Random& random) {
    ControlPositions hands;
    // Now and then to the stops, which is where things break.
    const auto position = [&] {
        const double u = next_uniform(random);
        return u < 0.15 ? 0.0 : (u > 0.85 ? 1.0 : (u - 0.15) / 0.7);
    };
    hands.stick = 2.0 * position() - 1.0;
    hands.throttle = position();
    hands.trim = 2.0 * position() - 1.0;
    hands.flap = static_cast<int>(next_bits(random) % 4);  // one of them more than there are
    return quantize(hands);
}

}  // namespace

TEST_CASE("random flights: two thousand flights with random controls stay finite and bounded") {
    Random random{20240501};
    int broken = 0, on_ground = 0, stalled = 0;
    for (int flight = 0; flight < 2000; ++flight) {
        ApproachChoice choice;
        choice.distance_nm = 1 + flight % 3;
        choice.side = static_cast<StartSide>(flight % 3);
        choice.headwind_kt = 20.0 * next_uniform(random);
        Scenario scenario = shipped_scenario(flight % 4 == 0 ? "wind_gradient" : "final_calm");
        if (flight % 4 != 0) {
            scenario = make_scenario(lesson_of(choice, scenario.lesson), scenario.aircraft,
                                     scenario.surroundings.runway);
        }
        if (flight % 5 == 0) {  // and some start just above the runway, where the ground is near
            scenario.start_state.x_m = -100.0;
            scenario.start_state.z_m = 5.0 + 30.0 * next_uniform(random);
        }
        Attempt attempt = begin_attempt(scenario);
        bool stall = false, sound = true;
        const int seconds = 10 + flight % 21;
        for (int second = 0; second < seconds && sound && !attempt.at_rest; ++second) {
            const Controls controls = random_controls(random);
            for (int i = 0; i < 120 && sound; ++i) {
                tick(scenario, attempt, controls);
                sound = within_bounds(attempt.flight);
            }
            stall = stall || stall_warning(scenario, attempt);
        }
        const FlightState& end = attempt.flight;
        if (!sound && broken++ < 5) {
            FAIL_CHECK("flight " << flight << ", tick " << attempt.tick << ": x " << end.x_m << ", z "
                                 << end.z_m << ", v " << end.vx_mps << ", " << end.vz_mps << ", pitch "
                                 << end.pitch_rad << ", rate " << end.pitch_rate_radps << ", power "
                                 << end.power << ", flap " << end.flap);
        }
        on_ground += attempt.on_ground;
        stalled += stall;
    }
    CHECK(broken == 0);
    CHECK(on_ground > 100);  // the ground and the stall were really visited
    CHECK(stalled > 500);
    MESSAGE("random flights: " << on_ground << " ended on the ground, " << stalled
                               << " came to the stall warning");
}
