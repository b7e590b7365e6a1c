// Why more power in a headwind: the same path at the same airspeed, wind by wind. Over the ground it goes
// slower, so the path asks for less sink; through the air that is a flatter descent, and a flatter descent at
// the same airspeed asks for more power and a higher nose.
#pragma once

#include <array>

#include "lesson/scenario.h"

namespace slopewise {

inline constexpr std::array<double, 6> headwinds_kt{0.0, 5.0, 10.0, 15.0, 20.0, 25.0};

// Steady flight down the nominal path at the target speed with the briefed flap.
struct HeadwindRow {
    double headwind_mps = 0.0;
    bool flyable = false;  // false: the rest is nothing
    double ground_speed_mps = 0.0;
    double sink_mps = 0.0;      // positive down: ground speed x tan(path)
    double air_path_rad = 0.0;  // of the descent through the air, positive down
    double power = 0.0;         // fraction of what the engine can give there
    double lever = 0.0;         // throttle lever, 0 to 1
    double pitch_rad = 0.0;
};

// A row a headwind of `headwinds_kt`, the same at every height, as far (m, > 0) from the aim point. The
// scenario's own wind is not used.
std::array<HeadwindRow, headwinds_kt.size()> headwind_table(const Scenario& scenario, double distance_m);

// Half a sea mile out: where the wind has been felt and something can still be done.
inline constexpr double headwind_table_m = 926.0;

}  // namespace slopewise
