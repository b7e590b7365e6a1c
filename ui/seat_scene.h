// What is seen from a seat: the picture for an eye somewhere, in a flight or in a still.
#pragma once

#include "lesson/scenario.h"
#include "ui/view.h"

namespace slopewise {

struct Seat {
    Point3 eye;
    double pitch_rad = 0.0;  // of the body above the horizon
    double time_s = 0.0;     // since the start, for what moves outside
    LightFaults faults;
};

SceneView seen_from(const Scenario& scenario, const Seat& seat);

}  // namespace slopewise
