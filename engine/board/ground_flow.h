// How the ground moves in the eye's picture while the aeroplane flies straight on: everything streams from
// the one point that stands still, where the flight would hit (the focus of expansion; Gibson 1950, from
// memory; Airplane Flying Handbook FAA-H-8083-3C on the aim point).
#pragma once

#include <optional>
#include <vector>

#include "board/runway_shape.h"

namespace slopewise {

// An eye that moves straight on, in the vertical plane of the runway.
struct MovingEye {
    Point3 eye;
    double forward_mps = 0.0, up_mps = 0.0;  // over the ground; up negative in a descent
};

// A place on the ground in the picture and how fast it moves there.
struct GroundFlow {
    Point3 place;
    Bearing seen;
    double right_radps = 0.0, up_radps = 0.0;
    bool beyond = false;  // farther than where the flight would hit
};

// Of one place. The rates are the derivatives of its two angles by time:
//   right' = y vx / (x^2 + y^2)
//   up'    = (x vx z / r - r vz) / (r^2 + z^2), r = sqrt(x^2 + y^2)
// with x, y, z from the eye to the place and vx, vz the eye's speed.
GroundFlow flow_of(const MovingEye& moving, const Point3& place);

// Where the eye's straight path meets the ground or the runway; none where it does not come down to either
// ahead.
std::optional<Point3> point_of_impact(const Runway& runway, const MovingEye& moving);

// Places spread evenly in the picture, below the horizon down to `down_rad` (more than 0, less than a right
// angle) and `aside_rad` to either side, `rows` by `columns` (two at least); none unless the eye is above the
// ground.
std::vector<GroundFlow> ground_flow(const Runway& runway, const MovingEye& moving, double down_rad,
                                    double aside_rad, int rows, int columns);

}  // namespace slopewise
