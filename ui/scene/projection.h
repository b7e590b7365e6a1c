// The pinhole camera: metres in the runway frame to pixels in a rectangle, with every angle exact.
//
//        up |  / ahead (the view axis, pitched from the horizon)
//           | /
//           |/____ right          x_px = centre + focal * right / ahead
//          eye                    y_px = centre - focal * up / ahead
#pragma once

#include <array>
#include <span>

#include "ui/view.h"

namespace slopewise {

// In the runway frame of CameraView.
struct WorldPoint {
    double x_m = 0, y_m = 0, z_m = 0;
};

// Seen from the eye; `ahead_m` is measured along the view axis.
struct CameraPoint {
    double right_m = 0, up_m = 0, ahead_m = 0;
};

struct ScreenPoint {
    double x_px = 0, y_px = 0;
};

struct PixelRectangle {
    double left_px = 0, top_px = 0, right_px = 0, bottom_px = 0;
};

struct Projection {
    double eye_x_m = 0, eye_y_m = 0, eye_z_m = 0;
    double sin_pitch = 0, cos_pitch = 1, pitch_rad = 0;
    double centre_x_px = 0, centre_y_px = 0;
    double focal_px = 1;  // pixels per unit tangent
    PixelRectangle frame;
};

// The view axis meets the middle of the rectangle; the field of view spans its width.
Projection make_projection(const CameraView& camera, const PixelRectangle& frame);

CameraPoint to_camera(const Projection& projection, const WorldPoint& point);

// `point.ahead_m` must be positive: clip first.
ScreenPoint to_screen(const Projection& projection, const CameraPoint& point);

// Height on the screen, straight ahead, of a direction at an elevation (rad, negative below the horizon).
double elevation_to_y_px(const Projection& projection, double elevation_rad);

// Angles of the line of sight through a pixel: depression below the horizon (rad, positive down) and
// the angle to the right of the view's vertical plane (rad).
struct SightAngles {
    double depression_rad = 0, azimuth_rad = 0;
};
SightAngles sight_angles(const Projection& projection, const ScreenPoint& pixel);

// Nothing nearer than this along the view axis is drawn.
inline constexpr double near_plane_m = 1.0;

// A polygon in front of the near plane. Clipping a convex polygon adds one corner at most.
struct ClippedPolygon {
    static constexpr std::size_t capacity = 24;
    std::array<CameraPoint, capacity> point;
    std::size_t count = 0;  // below three: nothing is left
};

// Clips against the near plane; a polygon of more than capacity - 1 corners is cut short.
ClippedPolygon clip_near(const Projection& projection, std::span<const WorldPoint> polygon);

}  // namespace slopewise
