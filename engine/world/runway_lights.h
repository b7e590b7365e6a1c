// The lights along a runway and before it, where the standards put them.
#pragma once

#include <vector>

#include "world/runway.h"
#include "world/visibility.h"

namespace slopewise {

struct RunwayLight {
    enum class Colour { white, green, red };

    Point3 place;
    Colour colour = Colour::white;
    double intensity_cd = 0.0;  // towards the approach, at full setting
};

// What there is to light.
struct RunwayOutline {
    double length_m = 0.0, width_m = 0.0;
    double slope = 0.0;  // tangent, positive up in the landing direction
    bool edge_lights = false, approach_lights = false;
};

// Edge lights in pairs at most 60 m apart (ICAO Annex 14 Vol I, 5.3.9, from memory; FAA: at most 200 ft),
// white to the end on a runway without an instrument approach (yellow caution zones are for instrument
// runways: FAA AIM 2-1-4 b). Threshold green, end red (AIM 2-1-4 c), at least six of each (Annex 14 5.3.10
// and 5.3.11, from memory). Simple approach lights: a row of lights on the extended centreline every 60 m out
// to 420 m, and a crossbar 30 m wide at 300 m (Annex 14 5.3.4, from memory).
//
// Those that the approach sees, nearest end of the row first. Heights follow the ground.
std::vector<RunwayLight> make_runway_lights(const RunwayOutline& outline);

// The share of full setting at which the lights are run (common practice, no source): all by day, less as it
// darkens.
double brightness_setting(Background background);

}  // namespace slopewise
