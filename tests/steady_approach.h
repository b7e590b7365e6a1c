// A track made by hand: a steady approach, to be changed where a test wants it changed.
#pragma once

#include "review/track.h"

namespace slopewise::test {

// On the path at the target speed with landing flap from a wheel height down to 50 ft, ten points a second,
// two units seen white, power and lever at 30 %. The eye is 2 m above the wheels.
std::vector<TrackPoint> steady_approach(const Scenario& scenario, double from_ft);

}  // namespace slopewise::test
