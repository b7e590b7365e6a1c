#include "tests/reference/integrators.h"

namespace slopewise::reference {

StateVector vector_of(const FlightState& state) {
    return {state.x_m,   state.z_m, state.vx_mps, state.vz_mps, state.pitch_rad, state.pitch_rate_radps,
            state.power, state.flap};
}

FlightState state_of(const double* values) {
    return {values[0], values[1], values[2], values[3], values[4], values[5], values[6], values[7]};
}

void rates_into(const HeldFlight& flight, const double* state, double* rates) {
    const StateVector now = vector_of(rates_of(*flight.aircraft, *flight.surroundings, flight.controls,
                                               state_of(state), flight.disturbance));
    for (std::size_t i = 0; i < now.size(); ++i) rates[i] = now[i];
}

}  // namespace slopewise::reference
