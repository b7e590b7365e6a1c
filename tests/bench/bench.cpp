// How fast the engine flies, as CSV on standard output:
//   build/native/bench            natively, against CVODE and Odeint in the same run
//   node build/web/bench.js       as WebAssembly
// Every row is a 5 NM approach in the tourer, down to 50 ft. A row with an error compares positions at the
// end with the same flight at a sixteenth of the step.
#include <cmath>
#include <vector>

#include "base/units.h"
#include "tests/bench/measure.h"
#include "tests/bench/others.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::bench;

namespace {

Scenario five_miles() {
    const Scenario shipped = test::shipped_scenario("final_calm");
    Lesson lesson = shipped.lesson;
    lesson.start.distance_m = m_from_nm(5.0);
    return make_scenario(lesson, shipped.aircraft, shipped.surroundings.runway);
}

Scenario in_rough_air(const Scenario& calm) {
    Lesson lesson = calm.lesson;
    lesson.wind.kind = Wind::Kind::logarithmic;
    lesson.wind.headwind_mps = mps_from_kt(12.0);
    lesson.turbulence_w20_mps = mps_from_kt(15.0);
    lesson.air_events[0] = {AirEvent::Kind::gust, AirEvent::Trigger::distance, 0.0, 2000.0, 3.0, 1.0, 100.0};
    lesson.air_event_count = 1;
    lesson.failures[0] = {Failure::Kind::airspeed_stuck, Failure::Trigger::time, 60.0, 0.0, 0};
    lesson.failure_count = 1;
    return make_scenario(lesson, calm.aircraft, calm.surroundings.runway);
}

// The controls that a model pilot gave, tick by tick.
std::vector<Controls> controls_of_good_pilot(const Scenario& scenario) {
    std::vector<Controls> given;
    Attempt attempt = begin_attempt(scenario);
    ModelPilot pilot = pilot_for(scenario, PilotSkill{}, 1);
    demonstrate(scenario, attempt, pilot,
                [&](const Controls& controls, const Events&) { given.push_back(controls); });
    return given;
}

FlightState integrate(const Scenario& scenario, const std::vector<ControlPositions>& controls,
                      int steps_per_tick) {
    FlightState state = scenario.start_state;
    for (const ControlPositions& hands : controls) {
        for (int i = 0; i < steps_per_tick; ++i)
            state = advance(scenario.aircraft, scenario.surroundings, hands, state, tick_s / steps_per_tick);
    }
    return state;
}

void measure_course(const std::string& name, const Scenario& scenario,
                    const std::vector<ControlPositions>& controls, bool held) {
    const FlightState truth = integrate(scenario, controls, 16);
    const double error_m = distance_m(integrate(scenario, controls, 1), truth);
    FlightState end;
    const double seconds = quickest_s(9, [&] { end = integrate(scenario, controls, 1); });
    print_row(name + ": ours", static_cast<std::int64_t>(controls.size()), seconds, error_m);
    measure_others(name, {&scenario, controls, truth, error_m, held});
}

void measure_ticks(const std::string& name, const Scenario& scenario) {
    const std::vector<Controls> controls = controls_of_good_pilot(scenario);
    const double seconds = quickest_s(9, [&] {
        Attempt attempt = begin_attempt(scenario);
        for (const Controls& now : controls) tick(scenario, attempt, now);
    });
    print_row(name, static_cast<std::int64_t>(controls.size()), seconds);
}

}  // namespace

double slopewise::bench::distance_m(const FlightState& a, const FlightState& b) {
    return std::hypot(a.x_m - b.x_m, a.z_m - b.z_m);
}

int main() {
    const Scenario calm = five_miles();
    const std::vector<Controls> given = controls_of_good_pilot(calm);
    print_heading();
    measure_ticks("flown again in calm air", calm);
    measure_ticks("flown again in wind, turbulence, a gust and a failure", in_rough_air(calm));
    print_row("flown by the model pilot in calm air", static_cast<std::int64_t>(given.size()),
              quickest_s(5, [&] { controls_of_good_pilot(calm); }));

    // The trainer's own task: hands that move at every tick, so that an integrator is restarted at each.
    std::vector<ControlPositions> moving;
    for (const Controls& controls : given) moving.push_back(positions_of(controls));
    measure_course("controls moving", calm, moving, false);
    // And what large steps are made for: controls that never move.
    const std::vector<ControlPositions> still(given.size(), calm.start_trim.controls);
    measure_course("controls held", calm, still, true);
    return 0;
}
