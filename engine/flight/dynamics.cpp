#include "flight/dynamics.h"

#include <cmath>

#include "base/exact_math.h"
#include "base/interpolate.h"
#include "base/units.h"
#include "flight/aerodynamics.h"
#include "flight/propeller.h"

namespace slopewise {
namespace {

// The undercarriage: a sprung and damped strut per unit mass, soft enough for the tick, stiff enough to
// carry a landing. Common values for the model, no source: it is never scored.
constexpr double strut_stiffness_ps2 = 100.0;  // static sag 0.1 m
constexpr double strut_damping_ps = 14.0;      // ratio 0.7
constexpr double rolling_friction = 0.03;      // tarmac
constexpr double brake_friction = 0.25;        // gentle braking, with the lever closed
constexpr double nose_stiffness_ps2 = 20.0;    // brings the body axis level on its wheels
constexpr double nose_damping_ps = 8.0;
constexpr double most_nose_load = 3.0;  // in weights: a crash must not damp faster than a tick can follow

FlightState plus(const FlightState& s, const FlightState& rate, double dt_s) {
    return {s.x_m + rate.x_m * dt_s,
            s.z_m + rate.z_m * dt_s,
            s.vx_mps + rate.vx_mps * dt_s,
            s.vz_mps + rate.vz_mps * dt_s,
            s.pitch_rad + rate.pitch_rad * dt_s,
            s.pitch_rate_radps + rate.pitch_rate_radps * dt_s,
            s.power + rate.power * dt_s,
            s.flap + rate.flap * dt_s};
}

FlightState weighted_mean(const FlightState& a, const FlightState& b, const FlightState& c,
                          const FlightState& d) {
    const auto mean = [](double k1, double k2, double k3, double k4) {
        return (k1 + 2.0 * (k2 + k3) + k4) / 6.0;
    };
    return {mean(a.x_m, b.x_m, c.x_m, d.x_m),
            mean(a.z_m, b.z_m, c.z_m, d.z_m),
            mean(a.vx_mps, b.vx_mps, c.vx_mps, d.vx_mps),
            mean(a.vz_mps, b.vz_mps, c.vz_mps, d.vz_mps),
            mean(a.pitch_rad, b.pitch_rad, c.pitch_rad, d.pitch_rad),
            mean(a.pitch_rate_radps, b.pitch_rate_radps, c.pitch_rate_radps, d.pitch_rate_radps),
            mean(a.power, b.power, c.power, d.power),
            mean(a.flap, b.flap, c.flap, d.flap)};
}

// The flap motor: full speed towards the lever, slowing over the last tenth of a setting so that the
// rate is continuous and the integrator keeps its order.
double flap_rate(const Aircraft& aircraft, double lever, double position) {
    const double wanted = clamp(lever, 0.0, aircraft.flap_count - 1.0);
    return clamp(10.0 * (wanted - position), -1.0, 1.0) / aircraft.flap_travel_s;
}

// Short period about the commanded angle of attack: stiffness grows with dynamic pressure, damping with
// its root. The wheels add a restoring moment in proportion to the load they carry.
double pitch_acceleration(const Aircraft& aircraft, const ControlPositions& controls,
                          const FlightState& state, const FlightForces& now) {
    const PitchResponse& response = aircraft.pitch;
    const double equivalent_mps = now.tas_mps * std::sqrt(density_ratio(now.air));
    const double frequency = response.frequency_radps * equivalent_mps / response.reference_speed_mps;
    const double commanded = commanded_alpha_rad(aircraft, controls, state.power, now.flap.alpha_shift_rad);
    const double air = square(frequency) * (commanded - now.alpha_rad) -
                       2.0 * response.damping * frequency * state.pitch_rate_radps;
    if (now.wheel_load_n <= 0.0) return air;
    const double load = clamp(now.wheel_load_n / (aircraft.mass_kg * gravity_mps2), 0.0, most_nose_load);
    return air - load * (nose_stiffness_ps2 * state.pitch_rad + nose_damping_ps * state.pitch_rate_radps);
}

double height_over_ground_m(const Aircraft& aircraft, const Surroundings& surroundings,
                            const FlightState& state) {
    return wheel_height_m(aircraft, state) - ground_height_m(surroundings.runway, state.x_m);
}

void add_wheel_forces(const Aircraft& aircraft, const Surroundings& surroundings,
                      const ControlPositions& controls, const FlightState& state, FlightForces& forces) {
    const double compression_m = -height_over_ground_m(aircraft, surroundings, state);
    if (compression_m <= 0.0) return;
    const bool over_runway = state.x_m >= 0.0 && state.x_m <= surroundings.runway.length_m;
    const double ground_rise_mps = over_runway ? surroundings.runway.slope * state.vx_mps : 0.0;
    const double load =
        strut_stiffness_ps2 * compression_m - strut_damping_ps * (state.vz_mps - ground_rise_mps);
    if (load <= 0.0) return;
    forces.wheel_load_n = aircraft.mass_kg * load;
    const double friction = rolling_friction + (controls.throttle < 0.02 ? brake_friction : 0.0);
    forces.wheel_friction_n = friction * forces.wheel_load_n * clamp(state.vx_mps / 0.5, -1.0, 1.0);
}

}  // namespace

double settled_power(const Engine& engine, double lever) {
    return engine.idle_fraction + (1.0 - engine.idle_fraction) * lever;
}

double commanded_alpha_rad(const Aircraft& aircraft, const ControlPositions& controls, double power,
                           double flap_shift_rad) {
    const PitchResponse& response = aircraft.pitch;
    return response.neutral_alpha_rad + response.trim_range_rad * controls.trim +
           response.stick_range_rad * controls.stick + response.power_shift_rad * power + flap_shift_rad;
}

Point3 eye_position(const Aircraft& aircraft, const FlightState& state) {
    const double sine = exact::sin(state.pitch_rad), cosine = exact::cos(state.pitch_rad);
    const Geometry& geometry = aircraft.geometry;
    return {state.x_m + geometry.eye_forward_m * cosine - geometry.eye_up_m * sine, 0.0,
            state.z_m + geometry.eye_forward_m * sine + geometry.eye_up_m * cosine};
}

double wheel_height_m(const Aircraft& aircraft, const FlightState& state) {
    return state.z_m - aircraft.geometry.wheels_down_m;
}

AirMotion air_motion_at(const Aircraft& aircraft, const Surroundings& surroundings, const FlightState& state,
                        const Gust& gust) {
    AirMotion motion;
    motion.air = air_at(surroundings.air, surroundings.runway.elevation_m + state.z_m);
    motion.headwind_mps =
        headwind_at_mps(surroundings.wind, height_over_ground_m(aircraft, surroundings, state)) +
        gust.along_mps;
    motion.updraught_mps = gust.up_mps;
    motion.forward_mps = state.vx_mps + motion.headwind_mps;
    motion.up_mps = state.vz_mps - motion.updraught_mps;
    motion.tas_mps = std::sqrt(square(motion.forward_mps) + square(motion.up_mps));
    return motion;
}

FlightForces forces_at(const Aircraft& aircraft, const Surroundings& surroundings,
                       const ControlPositions& controls, const FlightState& state, const Gust& gust) {
    FlightForces forces{air_motion_at(aircraft, surroundings, state, gust)};
    forces.body_x = exact::cos(state.pitch_rad);
    forces.body_z = exact::sin(state.pitch_rad);
    forces.flap = flap_effect(aircraft, state.flap);
    forces.air_path_rad = exact::atan2(forces.up_mps, forces.forward_mps);
    forces.alpha_rad = state.pitch_rad - forces.air_path_rad;

    const double wing_height_m = height_over_ground_m(aircraft, surroundings, state) + aircraft.wing.height_m;
    const Coefficients shape = coefficients(aircraft, forces.alpha_rad, forces.flap, wing_height_m);
    const double force_n = 0.5 * forces.air.density_kgpm3 * square(forces.tas_mps) * aircraft.wing.area_m2;
    forces.lift_n = force_n * shape.lift;
    forces.drag_n = force_n * shape.drag;
    const double axial_mps = forces.forward_mps * forces.body_x + forces.up_mps * forces.body_z;
    forces.thrust_n = net_thrust_n(aircraft.engine, state.power, axial_mps, forces.air.density_kgpm3);
    add_wheel_forces(aircraft, surroundings, controls, state, forces);
    return forces;
}

FlightState rates_of(const Aircraft& aircraft, const Surroundings& surroundings,
                     const ControlPositions& controls, const FlightState& state,
                     const Disturbance& disturbance) {
    const FlightForces now = forces_at(aircraft, surroundings, controls, state, disturbance.gust);
    // Lift is normal to the air-relative velocity, drag against it, thrust along the body axis. At rest
    // in the air both aerodynamic forces are zero and their direction does not matter.
    const double per_tas = now.tas_mps > 0.0 ? 1.0 / now.tas_mps : 0.0;
    const double along_x = now.forward_mps * per_tas, along_z = now.up_mps * per_tas;
    const double per_mass = 1.0 / aircraft.mass_kg;

    FlightState rate;
    rate.x_m = state.vx_mps;
    rate.z_m = state.vz_mps;
    rate.vx_mps = per_mass * (now.thrust_n * now.body_x - now.drag_n * along_x - now.lift_n * along_z -
                              now.wheel_friction_n);
    rate.vz_mps = per_mass * (now.thrust_n * now.body_z - now.drag_n * along_z + now.lift_n * along_x +
                              now.wheel_load_n) -
                  gravity_mps2;
    rate.pitch_rad = state.pitch_rate_radps;
    rate.pitch_rate_radps = pitch_acceleration(aircraft, controls, state, now);
    const double settled = settled_power(aircraft.engine, controls.throttle) * disturbance.power_limit;
    rate.power = (settled - state.power) / aircraft.engine.lag_s;
    rate.flap = disturbance.flap_stuck ? 0.0 : flap_rate(aircraft, controls.flap, state.flap);
    return rate;
}

FlightState advance(const Aircraft& aircraft, const Surroundings& surroundings,
                    const ControlPositions& controls, const FlightState& state, double dt_s,
                    const Disturbance& disturbance) {
    const auto rates = [&](const FlightState& at) {
        return rates_of(aircraft, surroundings, controls, at, disturbance);
    };
    const FlightState k1 = rates(state);
    const FlightState k2 = rates(plus(state, k1, dt_s / 2.0));
    const FlightState k3 = rates(plus(state, k2, dt_s / 2.0));
    const FlightState k4 = rates(plus(state, k3, dt_s));
    return plus(state, weighted_mean(k1, k2, k3, k4), dt_s);
}

}  // namespace slopewise
