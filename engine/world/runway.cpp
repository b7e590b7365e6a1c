#include "world/runway.h"

#include "base/interpolate.h"

namespace slopewise {

double ground_height_m(const Runway& runway, double x_m) {
    return runway.slope * clamp(x_m, 0.0, runway.length_m);
}

Point3 aim_point(const Runway& runway) {
    return {runway.aim_distance_m, 0.0, ground_height_m(runway, runway.aim_distance_m)};
}

AimingPointMarking aiming_point_marking(double landing_distance_m) {
    // The table gives ranges (30-45 m long, 6-10 m wide, 18-22.5 m apart); the ends are chosen by size.
    if (landing_distance_m < 800.0) return {150.0, 30.0, 4.0, 6.0};
    if (landing_distance_m < 1200.0) return {250.0, 30.0, 6.0, 9.0};
    if (landing_distance_m < 2400.0) return {300.0, 45.0, 6.0, 18.0};
    return {400.0, 60.0, 10.0, 22.5};
}

}  // namespace slopewise
