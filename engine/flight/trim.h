// The trim solver: the steady state for a speed, flap and path. It gives the briefing its power and
// pitch figures, starts flights trimmed, and says plainly when the wanted state cannot be flown.
#pragma once

#include <string>

#include "flight/dynamics.h"

namespace slopewise {

struct TrimWanted {
    double cas_mps = 0.0;   // calibrated airspeed
    int flap = 0;           // setting, fully out
    double path_rad = 0.0;  // of the flight over the ground, negative down
    double height_m = 0.0;  // of the reference point above the threshold
};

struct TrimState {
    bool flyable = false;
    std::string reason;  // why not: "full power is too little"; empty when flyable
    double tas_mps = 0.0;
    double ground_speed_mps = 0.0;
    double sink_mps = 0.0;  // positive down
    double air_path_rad = 0.0;
    double alpha_rad = 0.0;
    double pitch_rad = 0.0;
    double power = 0.0;         // fraction of what the engine can give here
    ControlPositions controls;  // hands off: stick zero
};

// Steady flight in the air and mean wind at that height (the wind is taken as uniform there, and ground
// effect as at that height). Not flyable: slower than the stall, idle is still too much power, full
// power too little, or more trim than the wheel has.
TrimState solve_trim(const Aircraft& aircraft, const Surroundings& surroundings, const TrimWanted& wanted);

// The moving state that a trimmed flight starts with at x.
FlightState trimmed_start(const TrimWanted& wanted, const TrimState& trim, double x_m);

}  // namespace slopewise
