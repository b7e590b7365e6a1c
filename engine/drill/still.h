// A still of the approach: an eye somewhere on final, and the attitude that the aeroplane has there.
#pragma once

#include "drill/card.h"
#include "lesson/scenario.h"

namespace slopewise {

// The eye on the centreline so far (m) from the aim point, so much (rad) off the nominal path.
Point3 eye_on_line(const Runway& runway, double distance_m, double error_rad);

// The aeroplane there in steady flight along a path (rad, negative down) at an airspeed (m/s, calibrated),
// with landing flap; without them: straight at the aim point at the target speed. Where that cannot be flown
// steadily (full power too little, idle too much), the attitude is the briefed one.
Picture still_at(const Scenario& base, const Point3& eye);
Picture still_at(const Scenario& base, const Point3& eye, double path_rad, double cas_mps);

}  // namespace slopewise
