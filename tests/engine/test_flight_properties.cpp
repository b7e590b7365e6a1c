// Properties of whole flights and of the lights, over random aircraft, air, runways and hands.
#include <array>
#include <cmath>
#include <optional>
#include <vector>

#include "base/units.h"
#include "tests/check.h"
#include "tests/fixtures.h"
#include "tests/random_scenarios.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

LightFaults random_faults(Random& random) {
    LightFaults faults;
    for (std::size_t i = 0; i < faults.out.size(); ++i) {
        faults.out[i] = next_uniform(random) < 0.1;
        faults.aim_error_rad[i] = rad_from_deg(random_between(random, -1.0, 1.0));
    }
    faults.condensation = next_uniform(random);
    return faults;
}

// The first lever position more than a hundredth from where it stood, less that; empty if the good pilot
// leaves the lever alone for five seconds.
std::optional<double> first_lever_move(const Scenario& scenario) {
    Attempt attempt = begin_attempt(scenario);
    ModelPilot pilot = pilot_for(scenario, PilotSkill{}, 1);
    const double before = positions_of(attempt.controls).throttle;
    while (time_s(attempt) < 5.0) {
        const Controls controls = fly(pilot, sight_of(scenario, attempt), time_s(attempt));
        const double move = positions_of(controls).throttle - before;
        if (std::abs(move) > 0.01) return move;
        tick(scenario, attempt, controls);
    }
    return std::nullopt;
}

// A flight by the good pilot, and the same controls and gusts flown again with several steps to each tick.
struct Pair {
    Summary ticks, finer;
};
Pair fly_twice(const Scenario& scenario, int steps) {
    Attempt attempt = begin_attempt(scenario);
    ModelPilot pilot = pilot_for(scenario, PilotSkill{}, 1);
    FlightState finer = attempt.flight;
    Track track = begin_track(scenario, attempt), finer_track = track;
    while (attempt.end == End::none && time_s(attempt) < 300.0) {
        const Controls controls = fly(pilot, sight_of(scenario, attempt), time_s(attempt));
        const Events events = tick(scenario, attempt, controls);
        for (int i = 0; i < steps; ++i)
            finer = advance(scenario.aircraft, scenario.surroundings, positions_of(controls), finer,
                            tick_s / steps, disturbance_of(scenario, attempt.conditions));
        Attempt shadow = attempt;
        shadow.flight = finer;
        extend(track, scenario, attempt, events);
        extend(finer_track, scenario, shadow, events);
    }
    return {summarise(scenario, track, attempt.end), summarise(scenario, finer_track, attempt.end)};
}

}  // namespace

TEST_CASE("properties: an eye that rises sees no light turn from white towards red") {
    Random random{7};
    int changes = 0;
    for (int site = 0; site < random_flight_count / 10; ++site) {
        const Runway runway = random_runway(random);
        const LightSystem lights = make_lights(runway);
        const LightFaults faults = site % 2 == 0 ? LightFaults{} : random_faults(random);
        Point3 eye{random_between(random, -9000.0, 0.0), random_between(random, -200.0, 200.0), -10.0};
        const double step_m =
            rad_from_deg(1.0 / 60.0) * (runway.aim_distance_m - eye.x_m);  // a minute of arc
        std::array<double, LightSystem::most_units> seen{};
        int white_before = -1;
        bool rising = true;
        for (int step = 0; step < 500; ++step, eye.z_m += step_m) {
            const int white = white_count(lights, eye, faults);
            rising = rising && white >= white_before;
            changes += step > 0 && white > white_before;
            white_before = white;
            for (int unit = 0; unit < lights.count; ++unit) {
                double& before = seen[static_cast<std::size_t>(unit)];
                const double now = unit_white_fraction(lights, unit, eye, faults);
                rising = rising && now >= before && now <= 1.0;
                before = now;
            }
        }
        CHECK_MESSAGE(rising, "site " << site << ", condensation " << faults.condensation);
    }
    // More than one change a site: the colours were really crossed.
    CHECK(changes > random_flight_count / 10);
}

TEST_CASE(
    "properties: started equally far above and below the path, the good pilot first moves the lever "
    "oppositely") {
    Random random{8};
    const int starts = random_flight_count / 50;
    int flown = 0;
    for (int i = 0; i < starts; ++i) {
        Scenario above = random_scenario(random);
        Lesson lesson = above.lesson;
        lesson.wind = Wind{};
        lesson.wind.headwind_mps = mps_from_kt(random_between(random, 0.0, 20.0));
        lesson.turbulence_w20_mps = 0.0;  // the answer is to the picture, not to a gust
        lesson.air_event_count = lesson.failure_count = 0;
        lesson.start.flap = landing_flap(above.aircraft);
        lesson.start.cas_mps = lesson.target_cas_mps;
        lesson.start.path_rad = -above.surroundings.runway.lights.nominal_path_rad;
        lesson.start.offset_rad = rad_from_deg(random_between(random, 0.3, 0.7));
        above = make_scenario(lesson, above.aircraft, above.surroundings.runway);
        lesson.start.offset_rad = -lesson.start.offset_rad;
        const Scenario below = make_scenario(lesson, above.aircraft, above.surroundings.runway);
        if (!above.start_trim.flyable || !below.start_trim.flyable) continue;  // steep path, strong wind
        const std::optional<double> high = first_lever_move(above), low = first_lever_move(below);
        REQUIRE(high.has_value());
        REQUIRE(low.has_value());
        CHECK_MESSAGE((*high < 0.0 && *low > 0.0), above.aircraft.id << ": " << *high << ", " << *low);
        ++flown;
    }
    CHECK(flown > starts / 2);
    MESSAGE(flown << " pairs of mirrored starts");
}

TEST_CASE("properties: halving the step changes nothing that a gate shows") {
    Random random{9};
    const int flights = 4 + random_flight_count / 400;
    int gates = 0;
    double worst_deg = 0.0, worst_kt = 0.0, worst_fpm = 0.0;
    for (int i = 0; i < flights; ++i) {
        const Scenario scenario = random_scenario(random);
        const Pair pair = fly_twice(scenario, 2);
        REQUIRE(pair.ticks.gates.size() == pair.finer.gates.size());
        for (std::size_t g = 0; g < pair.ticks.gates.size(); ++g) {
            const GateValue &a = pair.ticks.gates[g], &b = pair.finer.gates[g];
            CHECK(a.reached == b.reached);
            CHECK(a.white_count == b.white_count);
            worst_deg = std::fmax(worst_deg, std::abs(deg_from_rad(a.mean.path_rad - b.mean.path_rad)));
            worst_kt = std::fmax(worst_kt, std::abs(kt_from_mps(a.mean.speed_mps - b.mean.speed_mps)));
            worst_fpm = std::fmax(worst_fpm, std::abs(fpm_from_mps(a.mean.sink_mps - b.mean.sink_mps)));
            gates += a.reached;
        }
    }
    // A gate shows tenths of a degree, knots and ft/min in tens. A hundredth of those steps cannot be seen,
    // and is far above what the method errs by where the air bends (the rows of a wind table, ground effect).
    CHECK(worst_deg < 0.001);
    CHECK(worst_kt < 0.01);
    CHECK(worst_fpm < 0.1);
    CHECK(gates > flights);
    MESSAGE(gates << " gates: halving the step moves them by " << worst_deg << " deg, " << worst_kt << " kt, "
                  << worst_fpm << " ft/min");
}
