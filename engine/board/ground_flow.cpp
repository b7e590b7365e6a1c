#include "board/ground_flow.h"

#include <cmath>

#include "base/exact_math.h"
#include "base/interpolate.h"

namespace slopewise {
namespace {

// Where a line from the eye, rising `rise` a metre along x, meets the runway's plane or the level ground
// around it; a place before the eye. A line that stays above has none.
std::optional<Point3> meets_ground(const Runway& runway, const Point3& eye, double rise) {
    // The runway first: z = slope x.
    const double closing = runway.slope - rise;
    if (closing > 0.0) {
        const double x_m = eye.x_m + (eye.z_m - runway.slope * eye.x_m) / closing;
        if (x_m > eye.x_m && x_m >= 0.0 && x_m <= runway.length_m)
            return Point3{x_m, 0.0, ground_height_m(runway, x_m)};
    }
    if (rise >= 0.0) return std::nullopt;
    const double before_m = eye.x_m - eye.z_m / rise;
    if (before_m <= 0.0) return Point3{before_m, 0.0, 0.0};
    const double level_m = ground_height_m(runway, runway.length_m);
    const double after_m = eye.x_m + (level_m - eye.z_m) / rise;
    return Point3{after_m, 0.0, level_m};
}

}  // namespace

GroundFlow flow_of(const MovingEye& moving, const Point3& place) {
    const double x = place.x_m - moving.eye.x_m, y = place.y_m - moving.eye.y_m,
                 z = place.z_m - moving.eye.z_m;
    const double level2 = x * x + y * y, level = std::sqrt(level2);
    GroundFlow flow;
    flow.place = place;
    flow.seen = bearing_of(moving.eye, place);
    flow.right_radps = y * moving.forward_mps / level2;
    flow.up_radps = (x * moving.forward_mps * z / level - level * moving.up_mps) / (level2 + z * z);
    return flow;
}

std::optional<Point3> point_of_impact(const Runway& runway, const MovingEye& moving) {
    const bool above = moving.eye.z_m > ground_height_m(runway, moving.eye.x_m);
    if (!above || moving.forward_mps <= 0.0) return std::nullopt;
    return meets_ground(runway, moving.eye, moving.up_mps / moving.forward_mps);
}

std::vector<GroundFlow> ground_flow(const Runway& runway, const MovingEye& moving, double down_rad,
                                    double aside_rad, int rows, int columns) {
    std::vector<GroundFlow> flows;
    const std::optional<Point3> hit = point_of_impact(runway, moving);
    if (moving.eye.z_m <= ground_height_m(runway, moving.eye.x_m)) return flows;
    for (int row = 1; row <= rows; ++row) {
        const double depression_rad = down_rad * row / rows;
        // From above, a line below the horizon meets the ground always.
        const Point3 ahead = *meets_ground(runway, moving.eye, -exact::tan(depression_rad));
        for (int column = 0; column < columns; ++column) {
            const double right_rad = lerp(-aside_rad, aside_rad, static_cast<double>(column) / (columns - 1));
            Point3 place = ahead;
            place.y_m = (place.x_m - moving.eye.x_m) * exact::tan(right_rad);
            flows.push_back(flow_of(moving, place));
            flows.back().beyond = hit && place.x_m > hit->x_m;
        }
    }
    return flows;
}

}  // namespace slopewise
