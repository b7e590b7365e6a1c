#include "ui/scene/convex_face.h"

#include <algorithm>
#include <cmath>

namespace slopewise {
namespace {

WorldPoint minus(const WorldPoint& a, const WorldPoint& b) {
    return {a.x_m - b.x_m, a.y_m - b.y_m, a.z_m - b.z_m};
}
double dot(const WorldPoint& a, const WorldPoint& b) { return a.x_m * b.x_m + a.y_m * b.y_m + a.z_m * b.z_m; }
WorldPoint cross(const WorldPoint& a, const WorldPoint& b) {
    return {a.y_m * b.z_m - a.z_m * b.y_m, a.z_m * b.x_m - a.x_m * b.z_m, a.x_m * b.y_m - a.y_m * b.x_m};
}
WorldPoint reversed(const WorldPoint& a) { return {-a.x_m, -a.y_m, -a.z_m}; }

WorldPoint normal_of(std::span<const WorldPoint> corners) {
    return cross(minus(corners[1], corners[0]), minus(corners[2], corners[0]));
}

WorldPoint to_eye(const Painter& painter, const WorldPoint& from) {
    return minus({painter.projection.eye_x_m, painter.projection.eye_y_m, painter.projection.eye_z_m}, from);
}

void fill_lit(const Painter& painter, std::span<const WorldPoint> corners, const WorldPoint& normal,
              const Rgb& colour, double presence) {
    const double sun = std::max(0.0, dot(normal, painter.light.to_sun) / std::sqrt(dot(normal, normal)));
    const double direct = painter.light.direct;
    fill(painter, corners, scaled(colour, 0.80 - 0.14 * direct + 0.42 * direct * sun), Edge::coverage,
         presence);
}

}  // namespace

void face(const Painter& painter, std::span<const WorldPoint> corners, const WorldPoint& inside,
          const Rgb& colour, double presence) {
    WorldPoint normal = normal_of(corners);
    if (dot(normal, minus(corners[0], inside)) < 0) normal = reversed(normal);
    if (dot(normal, to_eye(painter, corners[0])) > 0) fill_lit(painter, corners, normal, colour, presence);
}

void plate(const Painter& painter, std::span<const WorldPoint> corners, const Rgb& colour, double presence) {
    WorldPoint normal = normal_of(corners);
    if (dot(normal, to_eye(painter, corners[0])) < 0) normal = reversed(normal);
    fill_lit(painter, corners, normal, colour, presence);
}

}  // namespace slopewise
