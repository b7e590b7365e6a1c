#include <cvode/cvode.h>
#include <nvector/nvector_serial.h>
#include <sundials/sundials_config.h>
#include <sunnonlinsol/sunnonlinsol_fixedpoint.h>

#include <cstdio>
#include <cstdlib>

#include "tests/reference/integrators.h"

namespace slopewise::reference {
namespace {

void check(int answer, const char* call) {
    if (answer >= 0) return;
    std::fprintf(stderr, "SUNDIALS: %s answers %d\n", call, answer);
    std::abort();
}

int rates_for_cvode(sunrealtype, N_Vector state, N_Vector rates, void* flight) {
    rates_into(*static_cast<const HeldFlight*>(flight), N_VGetArrayPointer(state), N_VGetArrayPointer(rates));
    return 0;
}

SUNContext new_context() {
    SUNContext context = nullptr;
#if SUNDIALS_VERSION_MAJOR >= 7  // Debian 13; Debian 12 has version 6
    check(SUNContext_Create(SUN_COMM_NULL, &context), "SUNContext_Create");
#else
    check(SUNContext_Create(nullptr, &context), "SUNContext_Create");
#endif
    return context;
}

}  // namespace

struct Cvode::Memory {
    HeldFlight flight;
    SUNContext context = new_context();
    N_Vector values = N_VNew_Serial(8, context);
    void* solver = CVodeCreate(CV_ADAMS, context);
    // Nothing here is stiff (the quickest motion takes a quarter of a second), so plain iteration solves the
    // implicit formulas and no matrix is needed.
    SUNNonlinearSolver iteration = SUNNonlinSol_FixedPoint(values, 0, context);
};

Cvode::Cvode(double tolerance) : memory_(std::make_unique<Memory>()) {
    check(CVodeInit(memory_->solver, rates_for_cvode, 0.0, memory_->values), "CVodeInit");
    check(CVodeSStolerances(memory_->solver, tolerance, tolerance), "CVodeSStolerances");
    check(CVodeSetNonlinearSolver(memory_->solver, memory_->iteration), "CVodeSetNonlinearSolver");
    check(CVodeSetUserData(memory_->solver, &memory_->flight), "CVodeSetUserData");
    check(CVodeSetMaxNumSteps(memory_->solver, 1000000), "CVodeSetMaxNumSteps");
}

Cvode::~Cvode() {
    CVodeFree(&memory_->solver);
    SUNNonlinSolFree(memory_->iteration);
    N_VDestroy(memory_->values);
    SUNContext_Free(&memory_->context);
}

void Cvode::restart(const HeldFlight& flight, const FlightState& state) {
    memory_->flight = flight;
    const StateVector values = vector_of(state);
    for (std::size_t i = 0; i < values.size(); ++i) N_VGetArrayPointer(memory_->values)[i] = values[i];
    check(CVodeReInit(memory_->solver, 0.0, memory_->values), "CVodeReInit");
}

FlightState Cvode::after(double seconds) {
    sunrealtype reached_s = 0.0;
    // It may step beyond and interpolates back; the right-hand side does not change before the next restart.
    check(CVode(memory_->solver, seconds, memory_->values, &reached_s, CV_NORMAL), "CVode");
    return state_of(N_VGetArrayPointer(memory_->values));
}

}  // namespace slopewise::reference
