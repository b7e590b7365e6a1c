#include "flight/trim.h"

#include <cmath>

#include "base/exact_math.h"
#include "base/units.h"
#include "flight/aerodynamics.h"
#include "flight/propeller.h"

namespace slopewise {
namespace {

// Angle of the flight through the air (rad) that gives the wanted path over the ground in a headwind:
// V sin a = (V cos a - w) tan p, that is sin(a - p) = -(w/V) sin p.
double air_path_rad(double tas_mps, double headwind_mps, double path_rad) {
    const double sine = -headwind_mps / tas_mps * exact::sin(path_rad);
    return path_rad + exact::atan2(sine, std::sqrt(1.0 - sine * sine));
}

}  // namespace

TrimState solve_trim(const Aircraft& aircraft, const Surroundings& surroundings, const TrimWanted& wanted) {
    TrimState trim;
    trim.controls.flap = wanted.flap;
    const Air air = air_at(surroundings.air, surroundings.runway.elevation_m + wanted.height_m);
    const double wheel_height = wanted.height_m - aircraft.geometry.wheels_down_m;
    const double headwind = headwind_at_mps(surroundings.wind, wheel_height);
    const FlapEffect flap = flap_effect(aircraft, wanted.flap);
    trim.tas_mps = tas_from_cas_mps(wanted.cas_mps, air);
    if (headwind >= trim.tas_mps) {
        trim.reason = "the headwind is as fast as the aircraft";
        return trim;
    }
    trim.air_path_rad = air_path_rad(trim.tas_mps, headwind, wanted.path_rad);
    trim.ground_speed_mps = trim.tas_mps * exact::cos(trim.air_path_rad) - headwind;
    trim.sink_mps = -trim.tas_mps * exact::sin(trim.air_path_rad);

    // Thrust follows from the balance along the flight; what is left across it falls as alpha grows, so
    // halving the interval up to the stall finds the angle of attack.
    const double weight_n = aircraft.mass_kg * gravity_mps2;
    const double force_n = 0.5 * air.density_kgpm3 * trim.tas_mps * trim.tas_mps * aircraft.wing.area_m2;
    const double sine = exact::sin(trim.air_path_rad), cosine = exact::cos(trim.air_path_rad);
    const auto thrust_at = [&](double alpha) {
        const double drag_n =
            force_n * coefficients(aircraft, alpha, flap, wheel_height + aircraft.wing.height_m).drag;
        return (drag_n + weight_n * sine) / exact::cos(alpha);
    };
    const auto missing_lift_at = [&](double alpha) {
        const double lift_n =
            force_n * coefficients(aircraft, alpha, flap, wheel_height + aircraft.wing.height_m).lift;
        return weight_n * cosine - lift_n - thrust_at(alpha) * exact::sin(alpha);
    };
    double low = rad_from_deg(-20.0), high = stall_alpha_rad(aircraft, flap);
    if (missing_lift_at(high) > 0.0) {
        trim.reason = "the speed is below the stall";
        return trim;
    }
    for (int i = 0; i < 60; ++i) {
        const double middle = 0.5 * (low + high);
        (missing_lift_at(middle) > 0.0 ? low : high) = middle;
    }
    trim.alpha_rad = 0.5 * (low + high);
    trim.pitch_rad = trim.air_path_rad + trim.alpha_rad;
    const double axial_mps = trim.tas_mps * exact::cos(trim.alpha_rad);
    trim.power =
        power_fraction_for_thrust(aircraft.engine, thrust_at(trim.alpha_rad), axial_mps, air.density_kgpm3);

    const double idle = aircraft.engine.idle_fraction;
    trim.controls.throttle = (trim.power - idle) / (1.0 - idle);
    const double hands_off = commanded_alpha_rad(aircraft, trim.controls, trim.power, flap.alpha_shift_rad);
    trim.controls.trim = (trim.alpha_rad - hands_off) / aircraft.pitch.trim_range_rad;
    if (trim.power < idle) {
        trim.reason = "idle is still too much power";
    } else if (trim.power > 1.0) {
        trim.reason = "full power is too little";
    } else if (std::abs(trim.controls.trim) > 1.0) {
        trim.reason = "the trim wheel does not reach that speed";
    }
    trim.flyable = trim.reason.empty();
    return trim;
}

FlightState trimmed_start(const TrimWanted& wanted, const TrimState& trim, double x_m) {
    FlightState state;
    state.x_m = x_m;
    state.z_m = wanted.height_m;
    state.vx_mps = trim.ground_speed_mps;
    state.vz_mps = -trim.sink_mps;
    state.pitch_rad = trim.pitch_rad;
    state.power = trim.power;
    state.flap = wanted.flap;
    return state;
}

}  // namespace slopewise
