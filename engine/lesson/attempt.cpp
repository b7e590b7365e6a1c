#include "lesson/attempt.h"

#include <cmath>

#include "base/hash.h"
#include "base/units.h"
#include "flight/aerodynamics.h"
#include "lesson/gates.h"

namespace slopewise {
namespace {

// Below 50 ft counts as the end of the approach only this close to the threshold; further out it is a
// low approach, which goes on (and is scored) until it is mended, given up, or in the ground.
constexpr double floor_range_m = 450.0;

// A go-around is recognised without being said: full power and climbing for this long.
constexpr double full_power_lever = 0.95;
constexpr double climb_mps = mps_from_fpm(100.0);
constexpr int climb_ticks_needed = 240;  // 2 s

constexpr double rest_speed_mps = 0.3;

End end_of_scoring(const Scenario& scenario, const Attempt& attempt) {
    const double x_m = attempt.flight.x_m;
    if (attempt.controls.go_around || attempt.climb_ticks >= climb_ticks_needed) return End::went_around;
    if (attempt.on_ground) return x_m < 0.0 ? End::ground_short : End::reached_floor;  // on a rising runway
    if (wheel_height_m(scenario.aircraft, attempt.flight) <= scoring_floor_m && x_m >= -floor_range_m)
        return End::reached_floor;
    if (x_m > scenario.surroundings.runway.length_m) return End::overflew;
    return End::none;
}

Moment moment_of(const Scenario& scenario, const Attempt& attempt) {
    const AirMotion motion =
        air_motion_at(scenario.aircraft, scenario.surroundings, attempt.flight, attempt.conditions.gust);
    const Point3 eye = eye_position(scenario.aircraft, attempt.flight);
    return {time_s(attempt), aim_point(scenario.surroundings.runway).x_m - eye.x_m,
            wheel_height_m(scenario.aircraft, attempt.flight), motion.tas_mps, motion.air};
}

bool wheels_touch(const Scenario& scenario, const FlightState& flight) {
    return wheel_height_m(scenario.aircraft, flight) <=
           ground_height_m(scenario.surroundings.runway, flight.x_m);
}

}  // namespace

FlightForces forces_now(const Scenario& scenario, const Attempt& attempt) {
    return forces_at(scenario.aircraft, scenario.surroundings, positions_of(attempt.controls), attempt.flight,
                     attempt.conditions.gust);
}

Attempt begin_attempt(const Scenario& scenario) {
    Attempt attempt;
    attempt.flight = scenario.start_state;
    attempt.conditions = begin_conditions(scenario);
    attempt.controls = quantize(scenario.start_trim.controls);
    return attempt;
}

Events tick(const Scenario& scenario, Attempt& attempt, const Controls& controls) {
    Events events;
    if (attempt.at_rest) return events;
    attempt.controls = controls;
    const ControlPositions positions = positions_of(controls);
    if (conditions_change(scenario.lesson))
        advance_conditions(attempt.conditions, scenario, moment_of(scenario, attempt));
    attempt.flight = advance(scenario.aircraft, scenario.surroundings, positions, attempt.flight, tick_s,
                             disturbance_of(scenario, attempt.conditions));
    ++attempt.tick;

    const bool climbing = positions.throttle >= full_power_lever && attempt.flight.vz_mps > climb_mps;
    attempt.climb_ticks = climbing ? attempt.climb_ticks + 1 : 0;
    const bool touching = wheels_touch(scenario, attempt.flight);
    events.touched_down = touching && !attempt.on_ground;
    attempt.on_ground = touching;

    if (attempt.end == End::none) {
        attempt.end = end_of_scoring(scenario, attempt);
        events.scoring_ended = attempt.end != End::none;
        if (events.scoring_ended) attempt.end_tick = attempt.tick;
    }
    if (touching && std::abs(attempt.flight.vx_mps) < rest_speed_mps && positions.throttle < 0.02) {
        attempt.at_rest = true;
        events.came_to_rest = true;
    }
    return events;
}

std::uint64_t state_hash(const Attempt& attempt) {
    Hash hash;
    hash.add(static_cast<std::uint64_t>(attempt.tick));
    const FlightState& f = attempt.flight;
    for (const double value :
         {f.x_m, f.z_m, f.vx_mps, f.vz_mps, f.pitch_rad, f.pitch_rate_radps, f.power, f.flap})
        hash.add(value);
    add_to_hash(hash, attempt.conditions);
    hash.add(static_cast<std::uint64_t>(attempt.end));
    hash.add(static_cast<std::uint64_t>(attempt.end_tick));
    hash.add(static_cast<std::uint64_t>(attempt.climb_ticks));
    hash.add(static_cast<std::uint64_t>(attempt.on_ground));
    hash.add(static_cast<std::uint64_t>(attempt.at_rest));
    return hash.value();
}

bool stall_warning(const Scenario& scenario, const Attempt& attempt) {
    if (attempt.on_ground) return false;
    const FlightForces forces = forces_now(scenario, attempt);
    const FlapEffect flap = flap_effect(scenario.aircraft, attempt.flight.flap);
    return forces.alpha_rad >
           stall_alpha_rad(scenario.aircraft, flap) - scenario.aircraft.wing.warning_margin_rad;
}

}  // namespace slopewise
