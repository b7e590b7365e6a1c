// The numbers that a class takes home: of the school's aircraft, at one airfield, by the same equations that
// fly.
#pragma once

#include <array>
#include <vector>

#include "lesson/scenario.h"
#include "review/school.h"

namespace slopewise {

// Steady on the path at the target speed with landing flap, in a steady headwind.
struct HandoutWind {
    double headwind_mps = 0.0;
    bool flyable = false;
    double ground_speed_mps = 0.0;
    double sink_mps = 0.0;  // positive down
    double power = 0.0;     // fraction of what the engine can give
    double pitch_rad = 0.0;
};

struct HandoutGust {
    double factor_mps = 0.0;  // what the gusts rise over the mean wind
    double target_mps = 0.0;  // calibrated, with the school's share of it added
};

struct HandoutHeight {
    double distance_m = 0.0;     // to the aim point along the ground
    double height_m = 0.0;       // of the eye above the aim point, on the path
    double half_degree_m = 0.0;  // half a degree up or down there
};

// A picture of the slope lights and between which angles of the eye it is seen.
struct HandoutLights {
    int white = 0, units = 0;
    double from_rad = 0.0, to_rad = 0.0;  // from: 0 where there is no limit below; to: likewise above
};

struct HandoutNumbers {
    double target_mps = 0.0, stall_mps = 0.0;  // calibrated, with landing flap, as flown
    double path_rad = 0.0;
    double wheels_below_eye_m = 0.0;         // level
    double go_around_climb_mps = 0.0;        // full power, landing flap still out, at the target speed
    std::array<HandoutWind, 5> winds{};      // 0 to 20 kt
    std::array<HandoutGust, 5> gusts{};      // 0 to 20 kt
    std::array<HandoutHeight, 4> heights{};  // 3, 2, 1 and 0.5 NM
    std::vector<HandoutLights> lights;       // the highest first
};

// `base`: the aircraft and the airfield by day in calm air, at the approach speed.
HandoutNumbers handout_numbers(const Scenario& base, const School& school);

}  // namespace slopewise
