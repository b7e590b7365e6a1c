#include "drill/still.h"

#include "base/exact_math.h"
#include "world/sight.h"

namespace slopewise {

Point3 eye_on_line(const Runway& runway, double distance_m, double error_rad) {
    const Point3 aim = aim_point(runway);
    const double elevation_rad = runway.lights.nominal_path_rad + error_rad;
    return {aim.x_m - distance_m, 0.0, aim.z_m + distance_m * exact::tan(elevation_rad)};
}

Picture still_at(const Scenario& base, const Point3& eye) {
    const double elevation_rad = path_deviation(base.surroundings.runway, eye).elevation_rad;
    return still_at(base, eye, -elevation_rad, base.lesson.target_cas_mps);
}

Picture still_at(const Scenario& base, const Point3& eye, double path_rad, double cas_mps) {
    const int flap = landing_flap(base.aircraft);
    const double height_m = eye.z_m - base.aircraft.geometry.eye_up_m;
    TrimState trim = solve_trim(base.aircraft, base.surroundings, {cas_mps, flap, path_rad, height_m});
    if (!trim.flyable) trim = reference_trim(base, height_m);
    Picture picture;
    picture.eye = eye;
    picture.pitch_rad = trim.pitch_rad;
    picture.path_rad = path_rad;
    picture.ground_speed_mps = trim.ground_speed_mps;
    picture.cas_mps = cas_mps;
    picture.flap = flap;
    return picture;
}

}  // namespace slopewise
