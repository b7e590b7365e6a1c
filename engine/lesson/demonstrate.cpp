#include "lesson/demonstrate.h"

#include "world/sight.h"

namespace slopewise {

namespace {

// The attitude on the path at target speed with this flap, beside that with the briefed one; 0 where it
// cannot be flown.
double flap_pitch_rad(const Scenario& scenario, double height_m, int flap) {
    const TrimState with = solve_trim(scenario.aircraft, scenario.surroundings,
                                      {scenario.lesson.target_cas_mps, flap,
                                       -scenario.surroundings.runway.lights.nominal_path_rad, height_m});
    const TrimState briefed = reference_trim(scenario, height_m);
    return with.flyable && briefed.flyable ? with.pitch_rad - briefed.pitch_rad : 0.0;
}

}  // namespace

PilotPlan plan_of(const Scenario& scenario) {
    const double height_m = scenario.start_state.z_m / 2.0;
    const TrimState reference = reference_trim(scenario, height_m);
    Scenario calm = scenario;
    calm.surroundings.wind = Wind{};
    const TrimState in_calm = reference_trim(calm, height_m);
    PilotPlan plan{scenario.lesson.target_cas_mps,
                   scenario.surroundings.runway.lights.nominal_path_rad,
                   reference.pitch_rad,
                   reference.controls.throttle,
                   in_calm.controls.throttle,
                   in_calm.sink_mps,
                   briefed_flap(scenario),
                   {}};
    for (int flap = 0; flap < scenario.aircraft.flap_count; ++flap)
        plan.flap_pitch_rad[static_cast<std::size_t>(flap)] = flap_pitch_rad(scenario, height_m, flap);
    return plan;
}

Sight sight_of(const Scenario& scenario, const Attempt& attempt) {
    const FlightState& flight = attempt.flight;
    const AirMotion motion =
        air_motion_at(scenario.aircraft, scenario.surroundings, flight, attempt.conditions.gust);
    const Point3 eye = eye_position(scenario.aircraft, flight);
    const PathDeviation deviation = path_deviation(scenario.surroundings.runway, eye);
    const double cas_mps = cas_from_tas_mps(motion.tas_mps, motion.air);
    const std::optional<double> shown = shown_airspeed_mps(scenario, attempt.conditions, cas_mps);
    Sight sight;
    sight.path_error_rad = deviation.angle_rad;
    sight.distance_m = deviation.distance_m;
    sight.wheel_height_m = wheel_height_m(scenario.aircraft, flight);
    sight.cas_mps = shown.value_or(0.0);
    sight.airspeed_shown = shown.has_value();
    sight.sink_mps = -flight.vz_mps;
    sight.ground_speed_mps = flight.vx_mps;
    sight.pitch_rad = flight.pitch_rad;
    sight.pitch_rate_radps = flight.pitch_rate_radps;
    sight.flap = flight.flap;
    sight.white_count = white_count(scenario.lights, eye, light_faults(scenario, attempt.conditions));
    return sight;
}

ModelPilot pilot_for(const Scenario& scenario, const PilotSkill& skill, std::uint64_t seed) {
    return make_pilot(plan_of(scenario), skill, seed, scenario.start_trim.controls);
}

}  // namespace slopewise
