#include <boost/numeric/odeint.hpp>

#include "tests/reference/integrators.h"

namespace slopewise::reference {

namespace odeint = boost::numeric::odeint;

void Odeint::restart(const HeldFlight& flight, const FlightState& state) {
    flight_ = flight;
    values_ = vector_of(state);
    time_s_ = 0.0;
    step_s_ = tick_s;
}

FlightState Odeint::after(double seconds) {
    const auto rates = [this](const StateVector& state, StateVector& out, double) {
        rates_into(flight_, state.data(), out.data());
    };
    auto stepper = odeint::make_controlled(tolerance_, tolerance_, odeint::runge_kutta_dopri5<StateVector>());
    while (time_s_ < seconds) {
        const double left_s = seconds - time_s_;
        const bool last = step_s_ >= left_s;
        double step_s = last ? left_s : step_s_;
        const bool taken = stepper.try_step(rates, values_, time_s_, step_s) == odeint::success;
        if (taken && last) time_s_ = seconds;                       // not a rounding short of it
        if (!taken || !last || step_s > step_s_) step_s_ = step_s;  // what it proposes next
    }
    return state_of(values_.data());
}

}  // namespace slopewise::reference
