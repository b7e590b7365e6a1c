#include "board/runway_shape.h"

#include <cmath>

#include "base/exact_math.h"
#include "base/units.h"

namespace slopewise {
namespace {

constexpr double least_path_rad = rad_from_deg(0.2), most_path_rad = rad_from_deg(9.0);
constexpr int halvings = 50;  // of that span: as near as a double tells

Point3 eye_on_path(const Runway& runway, double distance_m, double path_rad) {
    const Point3 aim = aim_point(runway);
    return {aim.x_m - distance_m, 0.0, aim.z_m + distance_m * exact::tan(path_rad)};
}

}  // namespace

Bearing bearing_of(const Point3& eye, const Point3& place) {
    const double ahead_m = place.x_m - eye.x_m, right_m = place.y_m - eye.y_m;
    return {exact::atan2(right_m, ahead_m),
            exact::atan2(place.z_m - eye.z_m, std::sqrt(ahead_m * ahead_m + right_m * right_m))};
}

std::array<Bearing, 4> runway_outline(const Runway& runway, const Point3& eye) {
    const double half_m = runway.width_m / 2.0, far_m = runway.length_m;
    const double far_z_m = ground_height_m(runway, far_m);
    return {bearing_of(eye, {0.0, -half_m, 0.0}), bearing_of(eye, {0.0, half_m, 0.0}),
            bearing_of(eye, {far_m, half_m, far_z_m}), bearing_of(eye, {far_m, -half_m, far_z_m})};
}

double form_ratio(const Runway& runway, const Point3& eye) {
    const auto corner = runway_outline(runway, eye);
    return (corner[2].up_rad - corner[1].up_rad) / (corner[2].right_rad - corner[3].right_rad);
}

double path_of_usual_shape_rad(const Runway& runway, const Runway& usual, double distance_m) {
    const double wanted = form_ratio(usual, eye_on_path(usual, distance_m, usual.lights.nominal_path_rad));
    // Seen from higher, a runway stands taller over the same far end.
    double low_rad = least_path_rad, high_rad = most_path_rad;
    for (int i = 0; i < halvings; ++i) {
        const double middle_rad = (low_rad + high_rad) / 2.0;
        const bool too_flat = form_ratio(runway, eye_on_path(runway, distance_m, middle_rad)) < wanted;
        (too_flat ? low_rad : high_rad) = middle_rad;
    }
    return (low_rad + high_rad) / 2.0;
}

}  // namespace slopewise
