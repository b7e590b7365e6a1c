// The same approach by the integrators of others, at the error that ours has, for the benchmark.
#pragma once

#include <span>

#include "flight/dynamics.h"
#include "lesson/scenario.h"

namespace slopewise::bench {

// Controls of each tick from the start of a scenario; where the flight truly ends; how far from there ours
// ends.
struct Course {
    const Scenario* scenario = nullptr;
    std::span<const ControlPositions> controls;
    FlightState truth;
    double our_error_m = 0.0;
    bool held = false;  // the controls never change, so that an integrator need never be restarted
};

double distance_m(const FlightState& a, const FlightState& b);

// Prints a row for each library; prints nothing where they are not built in (WebAssembly).
void measure_others(const std::string& course_name, const Course& course);

}  // namespace slopewise::bench
