#include "ui/scene/projection.h"

#include <algorithm>
#include <cmath>

namespace slopewise {

Projection make_projection(const CameraView& camera, const PixelRectangle& frame) {
    Projection p;
    p.eye_x_m = camera.x_m;
    p.eye_y_m = camera.y_m;
    p.eye_z_m = camera.z_m;
    p.pitch_rad = camera.pitch_rad;
    p.sin_pitch = std::sin(camera.pitch_rad);
    p.cos_pitch = std::cos(camera.pitch_rad);
    p.centre_x_px = (frame.left_px + frame.right_px) / 2.0;
    p.centre_y_px = (frame.top_px + frame.bottom_px) / 2.0;
    p.focal_px = (frame.right_px - frame.left_px) / 2.0 / std::tan(camera.horizontal_fov_rad / 2.0);
    p.frame = frame;
    return p;
}

CameraPoint to_camera(const Projection& p, const WorldPoint& point) {
    const double along_m = point.x_m - p.eye_x_m;
    const double above_m = point.z_m - p.eye_z_m;
    return {point.y_m - p.eye_y_m, above_m * p.cos_pitch - along_m * p.sin_pitch,
            along_m * p.cos_pitch + above_m * p.sin_pitch};
}

ScreenPoint to_screen(const Projection& p, const CameraPoint& point) {
    return {p.centre_x_px + p.focal_px * point.right_m / point.ahead_m,
            p.centre_y_px - p.focal_px * point.up_m / point.ahead_m};
}

double elevation_to_y_px(const Projection& p, double elevation_rad) {
    return p.centre_y_px - p.focal_px * std::tan(elevation_rad - p.pitch_rad);
}

SightAngles sight_angles(const Projection& p, const ScreenPoint& pixel) {
    const double right = (pixel.x_px - p.centre_x_px) / p.focal_px;
    const double up = (p.centre_y_px - pixel.y_px) / p.focal_px;
    const double along = p.cos_pitch - up * p.sin_pitch;  // level and straight ahead
    const double above = p.sin_pitch + up * p.cos_pitch;
    return {std::atan2(-above, std::hypot(along, right)), std::atan2(right, along)};
}

ClippedPolygon clip_near(const Projection& p, std::span<const WorldPoint> polygon) {
    ClippedPolygon out;
    const std::size_t count = std::min(polygon.size(), ClippedPolygon::capacity - 1);
    if (count < 3) return out;

    // Sutherland and Hodgman, one plane: keep corners in front, add the crossings.
    CameraPoint previous = to_camera(p, polygon[count - 1]);
    for (std::size_t i = 0; i < count; ++i) {
        const CameraPoint current = to_camera(p, polygon[i]);
        const bool was_in = previous.ahead_m >= near_plane_m;
        const bool is_in = current.ahead_m >= near_plane_m;
        if (was_in != is_in && out.count < ClippedPolygon::capacity) {
            const double t = (near_plane_m - previous.ahead_m) / (current.ahead_m - previous.ahead_m);
            out.point[out.count++] = {previous.right_m + t * (current.right_m - previous.right_m),
                                      previous.up_m + t * (current.up_m - previous.up_m), near_plane_m};
        }
        if (is_in && out.count < ClippedPolygon::capacity) out.point[out.count++] = current;
        previous = current;
    }
    if (out.count < 3) out.count = 0;
    return out;
}

}  // namespace slopewise
