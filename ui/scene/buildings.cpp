#include "ui/scene/buildings.h"
#include "ui/scene/convex_face.h"
#include "ui/scene/long_shadows.h"
#include "ui/scene/round_shapes.h"

#include <cmath>

#include "base/interpolate.h"

namespace slopewise {

namespace {

// Too small for faces: a pale line with a darker one upon it.
void draw_far_house(const Painter& painter, const House& house, const CameraPoint& seen, double presence) {
    const double scale = pixels_per_m(painter, seen);
    const ScreenPoint foot = to_screen(painter.projection, seen);
    const double half_px = scale * (house.length_m + house.width_m) / 4, wall_px = scale * house.wall_m * 0.8,
                 roof_px = scale * (house.ridge_m - house.wall_m);
    const double wall_y = foot.y_px - wall_px / 2, roof_y = foot.y_px - wall_px - roof_px / 2;
    const auto line = [&](double y_px, double thick_px, const Rgb& colour) {
        thin_line(painter, {foot.x_px - half_px, y_px}, {foot.x_px + half_px, y_px}, thick_px, thick_px,
                  seen_colour(painter.light, colour, seen.ahead_m), presence);
    };
    line(wall_y, wall_px, house.wall);
    line(roof_y, roof_px, house.roof);
}

void draw_near_house(const Painter& painter, const House& house, const CameraPoint& seen, double presence) {
    const double scale = pixels_per_m(painter, seen);
    const double c = std::cos(house.heading_rad), s = std::sin(house.heading_rad);
    const auto at = [&](double along_m, double aside_m, double up_m) {
        return WorldPoint{house.middle.x_m + along_m * c - aside_m * s,
                          house.middle.y_m + along_m * s + aside_m * c, house.middle.z_m + up_m};
    };
    const double l = house.length_m / 2, w = house.width_m / 2, wall = house.wall_m, ridge = house.ridge_m;
    const WorldPoint inside = at(0, 0, wall / 2);

    draw_long_shadow(painter, house.middle, house.length_m / 2, house.ridge_m, presence);
    const double shaded = smooth_step(scale * house.length_m / painter.grain_px, 18.0, 26.0);
    if (shaded > 0) {
        const ScreenPoint foot = to_screen(painter.projection, seen);
        const double depth_px =
            scale * house.length_m * std::max(0.02, painter.projection.eye_z_m / seen.ahead_m);
        soft_patch(painter, {foot.x_px + scale * l * 0.5, foot.y_px - depth_px * 0.15},
                   scale * (l + w) * 0.95, depth_px * 0.7,
                   seen_colour(painter.light, rgb_from_bytes(70, 80, 56), seen.ahead_m),
                   0.45 * presence * shaded * painter.light.direct);
    }
    const WorldPoint long_left[] = {at(-l, -w, 0), at(l, -w, 0), at(l, -w, wall), at(-l, -w, wall)};
    const WorldPoint long_right[] = {at(-l, w, 0), at(l, w, 0), at(l, w, wall), at(-l, w, wall)};
    const WorldPoint gable_near[] = {at(-l, -w, 0), at(-l, w, 0), at(-l, w, wall), at(-l, 0, ridge),
                                     at(-l, -w, wall)};
    const WorldPoint gable_far[] = {at(l, -w, 0), at(l, w, 0), at(l, w, wall), at(l, 0, ridge),
                                    at(l, -w, wall)};
    const WorldPoint roof_left[] = {at(-l, -w, wall), at(l, -w, wall), at(l, 0, ridge), at(-l, 0, ridge)};
    const WorldPoint roof_right[] = {at(-l, w, wall), at(l, w, wall), at(l, 0, ridge), at(-l, 0, ridge)};
    face(painter, long_left, inside, house.wall, presence);
    face(painter, long_right, inside, house.wall, presence);
    face(painter, gable_near, inside, house.wall, presence);
    face(painter, gable_far, inside, house.wall, presence);
    face(painter, roof_left, inside, house.roof, presence);
    face(painter, roof_right, inside, house.roof, presence);
}

// A vehicle too small for faces.
void draw_far_block(const Painter& painter, const Block& block, const Rgb& colour, const CameraPoint& seen,
                    double presence) {
    const double scale = pixels_per_m(painter, seen);
    const ScreenPoint foot = to_screen(painter.projection, seen);
    const Rgb tone = seen_colour(painter.light, colour, seen.ahead_m);
    blob(painter, {foot.x_px, foot.y_px - block.height_m * scale / 2}, block.length_m * scale * 0.42,
         std::max(0.6, block.height_m * scale * 0.6), tone, scaled(tone, 0.8), presence);
}

}  // namespace

// The faces come over the plain form while that is still there, and hide it: nothing shines through.
void draw_house(const Painter& painter, const House& house) {
    constexpr double farthest_m = 6000.0;
    const CameraPoint seen = to_camera(painter.projection, house.middle);
    if (seen.ahead_m < 40.0 || seen.ahead_m > farthest_m) return;
    const double length_px = house.length_m * pixels_per_m(painter, seen) / painter.grain_px;
    const double presence =
        smooth_step(length_px, 2.6, 5.5) * smooth_step(farthest_m - seen.ahead_m, 0.0, 600.0);
    if (presence <= 0) return;
    const double far = 1.0 - smooth_step(length_px, 15.0, 18.0), near = smooth_step(length_px, 12.0, 16.0);
    if (far > 0) draw_far_house(painter, house, seen, presence * far);
    if (near > 0) draw_near_house(painter, house, seen, presence * near);
}

void draw_block(const Painter& painter, const Block& block, const Rgb& colour) {
    const CameraPoint seen = to_camera(painter.projection, block.middle);
    if (seen.ahead_m < 30.0) return;
    const double length_px = block.length_m * pixels_per_m(painter, seen) / painter.grain_px;
    const double presence = smooth_step(length_px, 1.2, 2.6);
    if (presence <= 0) return;
    const double far = 1.0 - smooth_step(length_px, 7.5, 9.5);
    if (far > 0) draw_far_block(painter, block, colour, seen, presence * far);
    const double near = presence * smooth_step(length_px, 6.0, 8.5);
    if (near <= 0) return;
    const double c = std::cos(block.heading_rad), s = std::sin(block.heading_rad);
    const auto at = [&](double along, double aside, double up_m) {
        const double x = along * block.length_m / 2, y = aside * block.width_m / 2;
        return WorldPoint{block.middle.x_m + x * c - y * s, block.middle.y_m + x * s + y * c,
                          block.middle.z_m + up_m};
    };
    const double h = block.height_m;
    const WorldPoint inside = at(0, 0, h / 2);
    const WorldPoint top[] = {at(-0.8, -0.9, h), at(0.6, -0.9, h), at(0.6, 0.9, h), at(-0.8, 0.9, h)};
    for (const double side : {-1.0, 1.0}) {
        const WorldPoint flank[] = {at(-1, side, 0.3),      at(1, side, 0.3),        at(0.95, side, h * 0.6),
                                    at(0.6, side * 0.9, h), at(-0.8, side * 0.9, h), at(-1, side, h * 0.6)};
        const WorldPoint end[] = {at(side, -1, 0.3), at(side, 1, 0.3), at(side * 0.8, 0.9, h),
                                  at(side * 0.8, -0.9, h)};
        face(painter, flank, inside, scaled(colour, 0.85), near);
        face(painter, end, inside, scaled(colour, 0.72), near);
    }
    face(painter, top, inside, colour, near);
}

}  // namespace slopewise
