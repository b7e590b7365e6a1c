#include "lesson/demonstrate.h"

#include "world/sight.h"

namespace slopewise {

PilotPlan plan_of(const Scenario& scenario) {
    const TrimState reference = reference_trim(scenario, scenario.start_state.z_m / 2.0);
    return {scenario.lesson.target_cas_mps, scenario.surroundings.runway.lights.nominal_path_rad,
            reference.pitch_rad, reference.controls.throttle, landing_flap(scenario.aircraft)};
}

Sight sight_of(const Scenario& scenario, const Attempt& attempt) {
    const FlightState& flight = attempt.flight;
    const FlightForces forces =
        forces_at(scenario.aircraft, scenario.surroundings, positions_of(attempt.controls), flight);
    const PathDeviation deviation =
        path_deviation(scenario.surroundings.runway, eye_position(scenario.aircraft, flight));
    return {deviation.angle_rad,    deviation.distance_m, cas_from_tas_mps(forces.tas_mps, forces.air),
            -flight.vz_mps,         flight.vx_mps,        flight.pitch_rad,
            flight.pitch_rate_radps};
}

ModelPilot pilot_for(const Scenario& scenario, const PilotSkill& skill, std::uint64_t seed) {
    return make_pilot(plan_of(scenario), skill, seed, scenario.start_trim.controls);
}

}  // namespace slopewise
