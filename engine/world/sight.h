// The angles the eye measures against the aim point: the path deviation, in degrees and in height.
#pragma once

#include "world/runway.h"

namespace slopewise {

struct PathDeviation {
    double distance_m = 0.0;     // along the ground from the eye to the aim point; negative beyond it
    double height_m = 0.0;       // of the eye above the aim point
    double elevation_rad = 0.0;  // of the eye above the aim point
    double angle_rad = 0.0;      // elevation less the nominal path, positive high
    double offset_m = 0.0;       // height above the nominal path at this distance, positive high
};

// Deviation of an eye on the centreline from the nominal path through the aim point.
PathDeviation path_deviation(const Runway& runway, const Point3& eye);

// Height (m) of the nominal path above the aim point at a distance from it along the ground (m).
double path_height_m(const Runway& runway, double distance_m);

}  // namespace slopewise
