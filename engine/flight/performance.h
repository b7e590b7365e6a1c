// An aircraft's performance sheet, computed from its data by the same equations that fly it.
#pragma once

#include <string>
#include <vector>

#include "flight/trim.h"

namespace slopewise {

// Steady flight level at a speed.
struct LevelPoint {
    double cas_mps = 0.0;
    double power = 0.0;  // fraction of what the engine can give
    double pitch_rad = 0.0;
};

struct Performance {
    double vs0_mps = 0.0, vs1_mps = 0.0;  // stall: landing flap, flap up (calibrated)
    double best_glide_cas_mps = 0.0;      // flap up, idle: flattest
    double best_glide_rad = 0.0;          // its angle below the horizon, positive
    double landing_glide_rad = 0.0;       // at approach speed, landing flap, idle
    std::vector<LevelPoint> level;        // flap up, each 5 kt from above Vs1 to Vno where it can be flown
    double least_power_cas_mps = 0.0;     // flap up: slower than this needs more power, not less
    double climb_cas_mps = 0.0;           // of the greatest rate of climb, flap up, full power
    double climb_mps = 0.0;
    double go_around_climb_mps = 0.0;  // at approach speed, landing flap, full power
    TrimState approach;                // 3 degrees at approach speed, landing flap, calm
};

// In the air and at the runway of these surroundings, out of ground effect (their wind is taken as calm).
Performance performance_of(const Aircraft& aircraft, const Surroundings& surroundings);

// What about an aircraft contradicts itself, each with its JSON path, what it is and what is allowed:
// approach speed under 1.2 Vs0, stated stall speeds that mass and lift do not give, flap limits under the
// approach speed, flaps that do not add lift in order, a 3-degree approach that idle or full power cannot
// fly, speeds out of order.
struct AircraftFlaw {
    std::string path, what, allowed;
};
std::vector<AircraftFlaw> aircraft_flaws(const Aircraft& aircraft);

}  // namespace slopewise
