// What the instruments show, where that is not the truth itself: the vertical speed's lag.
#pragma once

#include "flight/dynamics.h"

namespace slopewise {

struct Instruments {
    double vertical_speed_mps = 0.0;  // positive up, as shown
};

// Time constant of the vertical speed: 95 % of a change is shown after three of them, 7.5 s (the
// training handbook's six to nine seconds, from memory).
inline constexpr double vertical_speed_lag_s = 2.5;

Instruments settled_instruments(const FlightState& state);

// After one tick at this state.
Instruments advance_instruments(const Instruments& instruments, const FlightState& state);

}  // namespace slopewise
