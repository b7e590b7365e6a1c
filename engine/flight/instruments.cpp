#include "flight/instruments.h"

namespace slopewise {

Instruments settled_instruments(const FlightState& state) { return {state.vz_mps}; }

Instruments advance_instruments(const Instruments& instruments, const FlightState& state) {
    constexpr double share = tick_s / (vertical_speed_lag_s + tick_s);  // implicit first-order step: stable
    return {instruments.vertical_speed_mps + share * (state.vz_mps - instruments.vertical_speed_mps)};
}

}  // namespace slopewise
