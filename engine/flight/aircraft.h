// A generic light aeroplane as data: everything the equations need to know of it. Loaded once, const.
#pragma once

#include <array>
#include <string>

namespace slopewise {

struct FlapSetting {
    std::string name;               // "landing"
    double lift_increment = 0.0;    // added to the lift coefficient at the same angle of attack
    double drag_increment = 0.0;    // added to the drag coefficient
    double max_lift = 0.0;          // greatest lift coefficient
    double alpha_shift_rad = 0.0;   // change of the angle of attack the aeroplane settles at, hands off
    double max_speed_mps = 0.0;     // calibrated; the flap must not be out above it
    double stated_stall_mps = 0.0;  // calibrated, at mass_kg, as the flight manual states it; 0: not stated
};

struct Wing {
    double area_m2 = 0.0;
    double span_m = 0.0;
    double height_m = 0.0;      // of the wing above the wheels, for ground effect
    double lift_at_zero = 0.0;  // lift coefficient at zero angle of attack of the body axis, flap up
    double lift_slope_per_rad = 0.0;
    double zero_lift_drag = 0.0;
    double oswald = 0.0;  // span efficiency, 0 to 1
    double separation_drag =
        0.0;  // drag coefficient per square of lift coefficient beyond 0.7 of the greatest
    double stall_rounding = 0.0;      // half-width of the rounding of the lift curve, in lift coefficient
    double warning_margin_rad = 0.0;  // the stall warning sounds this far before the stall
};

struct Engine {
    double rated_power_w = 0.0;  // shaft, sea level
    double idle_fraction = 0.0;  // of the rated power with the lever closed
    double lag_s = 0.0;          // first-order lag of power behind the lever
    double disc_diameter_m = 0.0;
    double efficiency = 0.0;     // share of shaft power that reaches the slipstream, 0 to 1
    double windmill_drag = 0.0;  // drag coefficient of the closed-throttle propeller on its disc area
};

struct PitchResponse {
    double neutral_alpha_rad = 0.0;  // angle of attack held hands off: trim centred, flap up, power idle
    double trim_range_rad = 0.0;     // full trim travel moves it by this each way
    double stick_range_rad = 0.0;    // full stick travel likewise
    double power_shift_rad = 0.0;    // full power likewise (nose up)
    double frequency_radps = 0.0;    // short period at the reference speed; grows with equivalent airspeed
    double damping = 0.0;            // ratio
    double reference_speed_mps = 0.0;
};

struct Geometry {
    double eye_forward_m = 0.0;  // eye ahead of the reference point, along the body axis
    double eye_up_m = 0.0;       // eye above the reference point
    double wheels_down_m = 0.0;  // wheels below the reference point
    double look_over_rad = 0.0;  // from the body axis down to the line of the nose
};

struct Aircraft {
    std::string id;
    std::string name;      // "Four-seat tourer"
    double mass_kg = 0.0;  // as flown; a lesson may set another within the range
    double least_mass_kg = 0.0, most_mass_kg = 0.0;
    Wing wing;
    Engine engine;
    PitchResponse pitch;
    Geometry geometry;
    std::array<FlapSetting, 4> flaps{};
    int flap_count = 0;               // settings 0 (up) ... flap_count - 1 (landing)
    double flap_travel_s = 0.0;       // from one setting to the next
    double approach_speed_mps = 0.0;  // calibrated, with landing flap
    double normal_max_mps = 0.0;      // Vno
    double never_exceed_mps = 0.0;    // Vne
};

inline int landing_flap(const Aircraft& aircraft) { return aircraft.flap_count - 1; }

// The flap at a position between settings (0 ... flap_count - 1): every value blended linearly.
struct FlapEffect {
    double lift_increment, drag_increment, max_lift, alpha_shift_rad;
};
FlapEffect flap_effect(const Aircraft& aircraft, double position);

// Power-off stall speed (m/s, calibrated, one g) with a flap setting: sqrt(2 W / (rho0 S CLmax)).
double stall_speed_mps(const Aircraft& aircraft, int flap);

}  // namespace slopewise
