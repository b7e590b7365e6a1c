#include "tests/bench/others.h"

#include <cmath>

#include "tests/bench/measure.h"
#include "tests/reference/integrators.h"

namespace slopewise::bench {
namespace {

using namespace slopewise::reference;

template <class Integrator>
FlightState fly(Integrator& integrator, const Course& course) {
    HeldFlight flight{&course.scenario->aircraft, &course.scenario->surroundings, course.controls[0], {}};
    FlightState state = course.scenario->start_state;
    if (course.held) {
        integrator.restart(flight, state);
        return integrator.after(static_cast<double>(course.controls.size()) * tick_s);
    }
    for (const ControlPositions& controls : course.controls) {
        flight.controls = controls;
        integrator.restart(flight, state);
        state = integrator.after(tick_s);
    }
    return state;
}

// At the loosest tolerance, of the powers of ten, that is no less accurate than ours; at the tightest that a
// library takes where none is.
template <class Integrator>
void measure(const std::string& name, const Course& course) {
    constexpr int tightest = 13;
    for (int digits = 1; digits <= tightest; ++digits) {
        Integrator integrator(std::pow(10.0, -digits));
        const double error_m = distance_m(fly(integrator, course), course.truth);
        if (error_m > course.our_error_m && digits < tightest) continue;
        const double seconds = quickest_s(3, [&] { fly(integrator, course); });
        print_row(name, static_cast<std::int64_t>(course.controls.size()), seconds, error_m);
        return;
    }
}

}  // namespace

void measure_others(const std::string& course_name, const Course& course) {
    measure<Cvode>(course_name + ": CVODE (Adams)", course);
    measure<Odeint>(course_name + ": Odeint (dopri5)", course);
}

}  // namespace slopewise::bench
