// The same equations of motion integrated by two libraries that know nothing of our own method: SUNDIALS
// CVODE (Adams' multistep formulas of variable order and step) and Boost.Odeint (Dormand and Prince's pair of
// order 5 with a controlled step). Both only ever ask rates_of for the rates.
#pragma once

#include <array>
#include <memory>

#include "flight/dynamics.h"

namespace slopewise::reference {

// What is integrated: everything of the flight that does not move while the controls are held.
struct HeldFlight {
    const Aircraft* aircraft = nullptr;
    const Surroundings* surroundings = nullptr;
    ControlPositions controls;
    Disturbance disturbance;
};

// A flight's state as the plain vector that libraries integrate, and back.
using StateVector = std::array<double, 8>;
StateVector vector_of(const FlightState& state);
FlightState state_of(const double* values);
void rates_into(const HeldFlight& flight, const double* state, double* rates);

// An integrator is restarted where the right-hand side jumps, at each change of the controls; `tolerance`
// bounds the local error of a step, absolute (m, m/s, rad, shares) and relative alike. A library that gives
// up is a bug of ours: the program stops and says which.
class Cvode {
public:
    explicit Cvode(double tolerance);
    ~Cvode();
    Cvode(const Cvode&) = delete;
    Cvode& operator=(const Cvode&) = delete;

    void restart(const HeldFlight& flight, const FlightState& state);
    FlightState after(double seconds);  // since the restart; never less than before

private:
    struct Memory;
    std::unique_ptr<Memory> memory_;
};

class Odeint {
public:
    explicit Odeint(double tolerance) : tolerance_(tolerance) {}

    void restart(const HeldFlight& flight, const FlightState& state);
    FlightState after(double seconds);  // since the restart; never less than before

private:
    double tolerance_;
    HeldFlight flight_;
    StateVector values_{};
    double time_s_ = 0.0;
    double step_s_ = 0.0;
};

}  // namespace slopewise::reference
