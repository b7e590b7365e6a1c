#include "world/sight.h"

#include "base/exact_math.h"

namespace slopewise {

double path_height_m(const Runway& runway, double distance_m) {
    return distance_m * exact::tan(runway.lights.nominal_path_rad);
}

PathDeviation path_deviation(const Runway& runway, const Point3& eye) {
    const Point3 aim = aim_point(runway);
    PathDeviation deviation;
    deviation.distance_m = aim.x_m - eye.x_m;
    deviation.height_m = eye.z_m - aim.z_m;
    deviation.elevation_rad = exact::atan2(deviation.height_m, deviation.distance_m);
    deviation.angle_rad = deviation.elevation_rad - runway.lights.nominal_path_rad;
    deviation.offset_m = deviation.height_m - path_height_m(runway, deviation.distance_m);
    return deviation;
}

}  // namespace slopewise
