// The runway as an outline in the eye's picture, and the path that a copied outline leads to.
#pragma once

#include <array>

#include "world/runway.h"

namespace slopewise {

// A direction from the eye: to the right of straight ahead, above the horizon (rad).
struct Bearing {
    double right_rad = 0.0, up_rad = 0.0;
};

Bearing bearing_of(const Point3& eye, const Point3& place);

// The corners of its surface as seen: near left, near right, far right, far left.
std::array<Bearing, 4> runway_outline(const Runway& runway, const Point3& eye);

// Height of the outline over the width of its far end, both as angles (Mertens, FAA-AM-79-25).
double form_ratio(const Runway& runway, const Point3& eye);

// The path (rad above the horizon at the aim point) on which this runway has the form ratio that the usual
// one has on its nominal path, from the same distance (m) to each one's aim point: where who copies the usual
// shape and looks at nothing else ends up. The least and the most it can say are 0.2 and 9 degrees. Which way
// a width and a slope mislead: FAA Aeronautical Information Manual 8-1-5 and Airplane Flying Handbook
// FAA-H-8083-3C, on illusions (from memory); how far is this geometry, and people do look at more than the
// shape.
double path_of_usual_shape_rad(const Runway& runway, const Runway& usual, double distance_m);

}  // namespace slopewise
