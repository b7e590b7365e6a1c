// The equations of motion: a point mass in the vertical plane with an attitude response, advanced in
// fixed steps by the classical Runge-Kutta method.
#pragma once

#include "flight/aircraft.h"
#include "flight/controls.h"
#include "world/atmosphere.h"
#include "world/runway.h"
#include "world/turbulence.h"
#include "world/wind.h"

namespace slopewise {

// What the aeroplane flies in; const during a flight.
struct Surroundings {
    AirColumn air;
    Wind wind;
    Runway runway;
};

// What acts on one tick besides the controls: the gust of the moment and what has failed.
struct Disturbance {
    Gust gust;
    double power_limit = 1.0;  // share of the engine's power that is left
    bool flap_stuck = false;   // the flap stays where it is
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

// The motion relative to the air, as it is at one state.
struct AirMotion {
    Air air;
    double headwind_mps = 0.0;  // mean wind and gust
    double updraught_mps = 0.0;
    double forward_mps = 0.0, up_mps = 0.0;  // of the flight through the air
    double tas_mps = 0.0;
};

// That and the forces.
struct FlightForces : AirMotion {
    FlapEffect flap{};
    double air_path_rad = 0.0;  // of the flight through the air, above the horizon
    double alpha_rad = 0.0;
    double body_x = 1.0, body_z = 0.0;  // direction of the body axis
    double lift_n = 0.0, drag_n = 0.0, thrust_n = 0.0;
    double wheel_load_n = 0.0;      // along z
    double wheel_friction_n = 0.0;  // along -x
};

inline constexpr double tick_s = 1.0 / 120.0;

AirMotion air_motion_at(const Aircraft& aircraft, const Surroundings& surroundings, const FlightState& state,
                        const Gust& gust);
FlightForces forces_at(const Aircraft& aircraft, const Surroundings& surroundings,
                       const ControlPositions& controls, const FlightState& state, const Gust& gust = {});

// Rates of change of every member of the state, per second.
FlightState rates_of(const Aircraft& aircraft, const Surroundings& surroundings,
                     const ControlPositions& controls, const FlightState& state,
                     const Disturbance& disturbance = {});

// The state after dt_s with the controls and the disturbance held (classical fourth-order Runge-Kutta).
FlightState advance(const Aircraft& aircraft, const Surroundings& surroundings,
                    const ControlPositions& controls, const FlightState& state, double dt_s,
                    const Disturbance& disturbance = {});

// The angle of attack (rad) that trim, stick, flap and power together ask for.
double commanded_alpha_rad(const Aircraft& aircraft, const ControlPositions& controls, double power,
                           double flap_shift_rad);

// Power fraction at which the engine settles with the lever at 0 ... 1.
double settled_power(const Engine& engine, double lever);

Point3 eye_position(const Aircraft& aircraft, const FlightState& state);
double wheel_height_m(const Aircraft& aircraft, const FlightState& state);  // above the threshold elevation

}  // namespace slopewise
