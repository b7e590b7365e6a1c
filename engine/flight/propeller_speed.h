// How fast a fixed-pitch propeller turns. The flight needs only the power; this is for what is heard of it.
#pragma once

#include "flight/aircraft.h"

namespace slopewise {

// At rest, with the full rated power at sea level (common practice, no source: light singles with a fixed
// pitch for climb and cruise turn 2,200 to 2,400 a minute in a static run).
inline constexpr double static_full_rpm = 2300.0;

// The advance ratio V / (n D) at which the blades take no power: the propeller turns by itself (common
// practice, no source: somewhat above the pitch, which is 0.7 to 0.8 of the diameter).
inline constexpr double windmill_advance_ratio = 0.9;

// Revolutions a minute at a power (0 to 1 of the rated power at sea level) and true airspeed (m/s). The power
// taken is c rho n^3 D^5 (1 - (J / J0)^2), a power coefficient that falls with the square of the advance
// ratio J, as a straight propeller polar has it (Lowry, Performance of Light Aircraft, 1999; recalled). With
// the full power at rest as its measure: n^3 - n w^2 = p N^3, w = V / (J0 D); without power n = w. The
// density is left out: n goes with its cube root, 3 % in 10,000 ft.
double propeller_rpm(const Engine& engine, double power_of_rated, double tas_mps);

}  // namespace slopewise
