#include "lesson/scenario.h"

#include "base/exact_math.h"

namespace slopewise {
namespace {

// The reference point's place that puts the eye where the lesson wants it, at this pitch.
FlightState placed(const Scenario& scenario, const TrimWanted& wanted, const TrimState& trim,
                   const Point3& eye) {
    FlightState state = trimmed_start(wanted, trim, 0.0);
    const Point3 there = eye_position(scenario.aircraft, state);
    state.x_m += eye.x_m - there.x_m;
    state.z_m += eye.z_m - there.z_m;
    return state;
}

}  // namespace

Scenario make_scenario(const Lesson& lesson, const Aircraft& aircraft, const Runway& runway) {
    Scenario scenario;
    scenario.lesson = lesson;
    scenario.aircraft = aircraft;
    if (lesson.mass_kg > 0.0) scenario.aircraft.mass_kg = lesson.mass_kg;
    scenario.surroundings = {air_column(lesson.weather), lesson.wind, runway};
    scenario.lights = make_lights(runway);

    const Point3 aim = aim_point(runway);
    const double elevation_rad = runway.lights.nominal_path_rad + lesson.start.offset_rad;
    const Point3 eye{aim.x_m - lesson.start.distance_m, 0.0,
                     aim.z_m + lesson.start.distance_m * exact::tan(elevation_rad)};
    const TrimWanted wanted{lesson.start.cas_mps, lesson.start.flap, lesson.start.path_rad,
                            eye.z_m - aircraft.geometry.eye_up_m};
    scenario.start_trim = solve_trim(scenario.aircraft, scenario.surroundings, wanted);
    // What is flown is what the levers can hold: the quantised positions.
    scenario.start_trim.controls = positions_of(quantize(scenario.start_trim.controls));
    scenario.start_state = placed(scenario, wanted, scenario.start_trim, eye);
    return scenario;
}

int briefed_flap(const Scenario& scenario) {
    const int landing = landing_flap(scenario.aircraft);
    const int briefed = scenario.lesson.briefed_flap;
    return briefed >= 0 && briefed < landing ? briefed : landing;
}

TrimState reference_trim(const Scenario& scenario, double height_m) {
    const TrimWanted wanted{scenario.lesson.target_cas_mps, briefed_flap(scenario),
                            -scenario.surroundings.runway.lights.nominal_path_rad, height_m};
    return solve_trim(scenario.aircraft, scenario.surroundings, wanted);
}

}  // namespace slopewise
