#include "review/track.h"

#include "world/sight.h"

namespace slopewise {

TrackPoint observe(const Scenario& scenario, const Attempt& attempt) {
    const FlightState& flight = attempt.flight;
    const ControlPositions controls = positions_of(attempt.controls);
    const FlightForces forces = forces_now(scenario, attempt);
    const LightFaults faults = light_faults(scenario, attempt.conditions);
    const Point3 eye = eye_position(scenario.aircraft, flight);
    const PathDeviation deviation = path_deviation(scenario.surroundings.runway, eye);

    TrackPoint point;
    point.time_s = time_s(attempt);
    point.distance_m = deviation.distance_m;
    point.eye_height_m = deviation.height_m;
    point.wheel_height_m = wheel_height_m(scenario.aircraft, flight);
    point.path_error_rad = deviation.angle_rad;
    point.path_offset_m = deviation.offset_m;
    point.cas_mps = cas_from_tas_mps(forces.tas_mps, forces.air);
    point.ground_speed_mps = flight.vx_mps;
    point.sink_mps = -flight.vz_mps;
    point.pitch_rad = flight.pitch_rad;
    point.power = flight.power;
    point.lever = controls.throttle;
    point.stick = controls.stick;
    point.trim = controls.trim;
    point.go_around_said = attempt.controls.go_around;
    point.flap_setting = controls.flap;
    point.flap_position = flight.flap;
    point.headwind_mps = forces.headwind_mps;
    point.white_count = white_count(scenario.lights, eye, faults);
    for (int i = 0; i < scenario.lights.pattern; ++i) {
        point.white_fraction[static_cast<std::size_t>(i)] =
            unit_shows(scenario.lights, i, eye, faults) ? unit_white_fraction(scenario.lights, i, eye, faults)
                                                        : -1.0;
    }
    return point;
}

Track begin_track(const Scenario& scenario, const Attempt& attempt) {
    Track track;
    track.points.reserve(4096);  // over six minutes: no allocation in the ticks of a usual flight
    track.points.push_back(observe(scenario, attempt));
    track.scored = 1;
    return track;
}

void extend(Track& track, const Scenario& scenario, const Attempt& attempt, const Events& events) {
    const bool due = attempt.tick % track_interval_ticks == 0 && !attempt.at_rest;
    if (!due && !events.scoring_ended && !events.came_to_rest) return;
    track.points.push_back(observe(scenario, attempt));
    if (attempt.end == End::none || events.scoring_ended) track.scored = track.points.size();
}

}  // namespace slopewise
