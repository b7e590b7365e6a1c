#include "tests/fuzz/fly.h"

#include <cmath>

#include "lesson/where_and_when.h"
#include "tests/fixtures.h"
#include "tests/fuzz/demand.h"
#include "tests/random_scenarios.h"

namespace slopewise::test {
namespace {

bool sound(const Scenario& scenario, const FlightState& flight) {
    for (const double one : {flight.x_m, flight.z_m, flight.vx_mps, flight.vz_mps, flight.pitch_rad,
                             flight.pitch_rate_radps, flight.power, flight.flap})
        if (!std::isfinite(one)) return false;
    return flight.power >= 0.0 && flight.power <= 1.0 && flight.flap >= -1e-9 &&
           flight.flap <= scenario.aircraft.flap_count - 1 + 1e-9;  // of rounding, as it travels
}

std::uint64_t seed_of(std::string_view bytes) {
    std::uint64_t seed = bytes.size();
    for (const char c : bytes) seed = seed * 31 + static_cast<unsigned char>(c);
    return seed;
}

}  // namespace

void fly_a_while(const Scenario& scenario, std::string_view bytes) {
    if (!scenario.start_trim.flyable) return;
    Random random{seed_of(bytes)};
    Attempt attempt = begin_attempt(scenario);
    demand(sound(scenario, attempt.flight), "the start is finite");
    Controls controls = quantize(scenario.start_trim.controls);
    for (int i = 0; i < 2000 && !attempt.at_rest; ++i) {
        if (i % 250 == 249) controls = random_controls(random);
        tick(scenario, attempt, controls);
        demand(sound(scenario, attempt.flight), "a flight stays finite");
    }
    const TrackPoint seen = observe(scenario, attempt);
    demand(std::isfinite(seen.path_error_rad) && std::isfinite(seen.cas_mps) && seen.white_count >= -1 &&
               seen.white_count <= scenario.lights.pattern,
           "what is seen of a flight is finite");
}

void fly_final(const Aircraft& aircraft, const Runway& runway, std::string_view bytes) {
    const Lesson lesson = lesson_at(*find_lesson(shipped(), "final_calm"), WhereAndWhen{}, aircraft);
    fly_a_while(make_scenario(lesson, aircraft, runway), bytes);
}

void fly_lesson(const Lesson& lesson, std::string_view bytes) {
    fly_a_while(scenario_of(shipped(), lesson), bytes);
}

}  // namespace slopewise::test
