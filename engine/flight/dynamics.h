// The equations of motion: a point mass in the vertical plane with an attitude response, advanced in
// fixed steps by the classical Runge-Kutta method.
#pragma once

#include "flight/aircraft.h"
#include "flight/controls.h"
#include "world/atmosphere.h"
#include "world/runway.h"
#include "world/wind.h"

namespace slopewise {

// What the aeroplane flies in; const during a flight.
struct Surroundings {
    Weather weather;
    Wind wind;
    Runway runway;
};

// Everything that is integrated. The reference point's position and inertial velocity in the runway
// frame; the attitude; the engine; the flap.
struct FlightState {
    double x_m = 0.0, z_m = 0.0;
    double vx_mps = 0.0, vz_mps = 0.0;
    double pitch_rad = 0.0;  // body axis above the horizon
    double pitch_rate_radps = 0.0;
    double power = 0.0;  // fraction of the power the engine can give here
    double flap = 0.0;   // in settings: 1.4 = on the way from 1 to 2
};

// The motion relative to the air and the forces, as they are at one state.
struct FlightForces {
    Air air;
    double headwind_mps = 0.0;
    double tas_mps = 0.0;
    double air_path_rad = 0.0;  // of the flight through the air, above the horizon
    double alpha_rad = 0.0;
    double lift_n = 0.0, drag_n = 0.0, thrust_n = 0.0;
    double wheel_load_n = 0.0;      // along z
    double wheel_friction_n = 0.0;  // along -x
};

inline constexpr double tick_s = 1.0 / 120.0;

FlightForces forces_at(const Aircraft& aircraft, const Surroundings& surroundings,
                       const ControlPositions& controls, const FlightState& state);

// Rates of change of every member of the state, per second.
FlightState rates_of(const Aircraft& aircraft, const Surroundings& surroundings,
                     const ControlPositions& controls, const FlightState& state);

// The state after dt_s with the controls held (classical fourth-order Runge-Kutta).
FlightState advance(const Aircraft& aircraft, const Surroundings& surroundings,
                    const ControlPositions& controls, const FlightState& state, double dt_s);

// The angle of attack (rad) that trim, stick, flap and power together ask for.
double commanded_alpha_rad(const Aircraft& aircraft, const ControlPositions& controls, double power,
                           double flap_shift_rad);

// Power fraction at which the engine settles with the lever at 0 ... 1.
double settled_power(const Engine& engine, double lever);

Point3 eye_position(const Aircraft& aircraft, const FlightState& state);
double wheel_height_m(const Aircraft& aircraft, const FlightState& state);  // above the threshold elevation

}  // namespace slopewise
