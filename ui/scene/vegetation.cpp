#include "ui/scene/vegetation.h"

#include <algorithm>
#include <cmath>

#include "base/interpolate.h"
#include "ui/scene/long_shadows.h"
#include "ui/scene/ribbon.h"
#include "ui/scene/round_shapes.h"

namespace slopewise {

namespace {

constexpr Rgb shade = rgb_from_bytes(58, 70, 48);  // the ground under a tree

// Quick refusal of what lies outside the view, before anything is projected.
bool beside_view(const Painter& painter, const CameraPoint& seen, double reach_m) {
    const double half_view = (painter.projection.frame.right_px - painter.projection.frame.left_px) / 2 /
                             painter.projection.focal_px;
    return std::abs(seen.right_m) > half_view * std::max(0.0, seen.ahead_m) + reach_m;
}

Rgb hazed(const Painter& painter, const Rgb& colour, double distance_m) {
    return seen_colour(painter.light, colour, distance_m);
}

// The look angle down at a thing: how much of its footprint's depth shows.
double down_slope(const Painter& painter, const WorldPoint& foot, const CameraPoint& seen) {
    return std::max(0.0, painter.projection.eye_z_m - foot.z_m) / seen.ahead_m;
}

// Light and dark crowns among those that are not drawn one by one.
void mottle(const Painter& painter, std::span<const WorldPoint> roof, const Rgb& colour) {
    WorldPoint middle;
    for (const WorldPoint& p : roof) {
        const double n = static_cast<double>(roof.size());
        middle = {middle.x_m + p.x_m / n, middle.y_m + p.y_m / n, middle.z_m + p.z_m / n};
    }
    constexpr double crown_m = 11.0;
    for (std::size_t i = 0; i < roof.size() + roof.size() / 2; ++i) {
        // Spread over the top by its own corners: fixed, and never outside it.
        const WorldPoint& rim = roof[i * 5 % roof.size()];
        const double share = 0.30 + 0.55 * static_cast<double>(i * 7 % 11) / 10.0;
        const CameraPoint seen =
            to_camera(painter.projection, {middle.x_m + (rim.x_m - middle.x_m) * share,
                                           middle.y_m + (rim.y_m - middle.y_m) * share, middle.z_m});
        if (seen.ahead_m < 30.0 || beside_view(painter, seen, crown_m)) continue;
        const double wide_px = crown_m * pixels_per_m(painter, seen),
                     tall_px = wide_px * std::max(0.25, 2.0 * down_slope(painter, middle, seen));
        const double shown = smooth_step(wide_px / painter.grain_px, 6.0, 9.0);
        if (shown <= 0) continue;
        soft_patch(painter, to_screen(painter.projection, seen), wide_px * 1.5, tall_px,
                   hazed(painter, scaled(colour, i % 2 == 0 ? 1.22 : 0.78), seen.ahead_m), 0.55 * shown);
    }
}

// One side of a wood, its top scalloped by crowns where they are large enough to show.
void draw_wood_side(const Painter& painter, const WorldPoint& a, const WorldPoint& b, const Wood& wood) {
    const CameraPoint from = to_camera(painter.projection, a), to = to_camera(painter.projection, b);
    if (std::min(from.ahead_m, to.ahead_m) < 15.0) return;
    if (beside_view(painter, from, 5.0) && beside_view(painter, to, 5.0) && from.right_m * to.right_m > 0)
        return;
    const double length_px =
        std::hypot(to_screen(painter.projection, from).x_px - to_screen(painter.projection, to).x_px,
                   to_screen(painter.projection, from).y_px - to_screen(painter.projection, to).y_px);
    const double length_m = std::hypot(b.x_m - a.x_m, b.y_m - a.y_m);
    constexpr double crown_m = 9.0;
    const double crown_px = crown_m * length_px / std::max(1.0, length_m);
    const double crowned = smooth_step(crown_px / painter.grain_px, 6.0, 11.0), swell_m = 1.3 * crowned;
    const int crowns = std::max(1, static_cast<int>(length_m / crown_m));
    // Two a crown: its top, and the dip beside it. Always as many, so that crowns stay where they grow.
    const int pieces = swell_m > 0 ? std::min(2 * crowns, Ribbon::most_pieces) : 1;
    // The left of the country is the sunny side.
    const double sun = clamp(
        0.9 + 0.12 * (a.y_m > b.y_m ? 1.0 : -1.0) * (b.x_m - a.x_m) / std::max(1.0, length_m), 0.78, 1.0);
    Ribbon ribbon(painter);
    for (int i = 0; i <= pieces; ++i) {
        const double t = static_cast<double>(i) / pieces;
        const double swell = i % 2 == 1 ? swell_m : -0.4 * swell_m;
        const WorldPoint foot{a.x_m + t * (b.x_m - a.x_m), a.y_m + t * (b.y_m - a.y_m),
                              a.z_m + t * (b.z_m - a.z_m)};
        const CameraPoint seen = to_camera(painter.projection, foot);
        const ScreenPoint low = to_screen(painter.projection, seen);
        const double tall_px = (wood.height_m + swell) * pixels_per_m(painter, seen);
        const double lit = 1.02 + (i % 2 == 1 ? 0.08 : -0.08) * crowned;
        ribbon.add({low.x_px, low.y_px - tall_px}, low,
                   hazed(painter, scaled(wood.colour, lit * sun), seen.ahead_m),
                   hazed(painter, scaled(wood.colour, 0.72 * sun), seen.ahead_m));
    }
    ribbon.finish(1.0);
}

// From the sides that are turned from the sun.
void draw_wood_shadow(const Painter& painter, std::span<const WorldPoint> outline, double height_m,
                      bool leftward) {
    const WorldPoint& to_sun = painter.light.to_sun;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const WorldPoint &a = outline[i], &b = outline[(i + 1) % outline.size()];
        const double lit =
            ((b.y_m - a.y_m) * to_sun.x_m - (b.x_m - a.x_m) * to_sun.y_m) * (leftward ? 1.0 : -1.0);
        if (lit < 0) draw_wall_shadow(painter, a, b, height_m, 1.0);
    }
}

}  // namespace

void draw_hedge(const Painter& painter, const Hedge& hedge) {
    const double rise_m = hedge.height_m / 2;
    CameraPoint a = to_camera(painter.projection, {hedge.from.x_m, hedge.from.y_m, hedge.from.z_m + rise_m});
    CameraPoint b = to_camera(painter.projection, {hedge.to.x_m, hedge.to.y_m, hedge.to.z_m + rise_m});
    if (std::min(a.ahead_m, b.ahead_m) < 15.0) return;  // under the nose
    if (beside_view(painter, a, 10.0) && beside_view(painter, b, 10.0) && a.right_m * b.right_m > 0) return;
    const ScreenPoint from = to_screen(painter.projection, a), to = to_screen(painter.projection, b);
    const double length_px = std::hypot(to.x_px - from.x_px, to.y_px - from.y_px);
    if (length_px < 1.5) return;
    const double nx = -(to.y_px - from.y_px) / length_px, ny = (to.x_px - from.x_px) / length_px;

    // Half the extent across the line: the hedge's breadth sideways; its height and the depth of its top
    // upwards.
    const auto half_px = [&](const CameraPoint& end, const WorldPoint& foot) {
        const double breadth_m = hedge.width_m,
                     tall_m = hedge.height_m + hedge.width_m * down_slope(painter, foot, end);
        return (std::abs(nx) * breadth_m + std::abs(ny) * tall_m) / 2 * pixels_per_m(painter, end);
    };
    const double from_px = half_px(a, hedge.from), to_px = half_px(b, hedge.to);
    const double presence = smooth_step(std::max(from_px, to_px) / painter.grain_px, 0.36, 0.85);
    if (presence <= 0) return;
    draw_wall_shadow(painter, hedge.from, hedge.to, hedge.height_m, presence);
    const auto tone = [&, middle_m = (a.ahead_m + b.ahead_m) / 2](double factor) {
        return hazed(painter, scaled(hedge.colour, factor), middle_m);
    };
    // Each form begins as the one before it looked, so that none is seen to come.
    const double widest_px = std::max(from_px, to_px), grains = widest_px / painter.grain_px;
    constexpr double line_below_px = 0.5;  // a soft line and a soft box of one pixel look the same
    constexpr double even_below_grains = 2.6;
    if (widest_px < line_below_px) {
        thin_line(painter, from, to, from_px * 2, to_px * 2, tone(1.0), presence);
        return;
    }
    const double lit = smooth_step(widest_px, line_below_px, 1.6);  // above and shaded below
    const double up = ny > 0 ? -1.0 : 1.0;
    if (grains < even_below_grains) {
        ScreenPolygon body;
        body.count = 4;
        body.point = {{{from.x_px + up * nx * from_px, from.y_px + up * ny * from_px},
                       {to.x_px + up * nx * to_px, to.y_px + up * ny * to_px},
                       {to.x_px - up * nx * to_px, to.y_px - up * ny * to_px},
                       {from.x_px - up * nx * from_px, from.y_px - up * ny * from_px}}};
        const ImU32 top = packed(tone(1.0 + 0.10 * lit)), foot = packed(tone(1.0 - 0.14 * lit));
        body.colour = {top, top, foot, foot};
        fill(painter, body, Edge::coverage, presence);
        return;
    }
    // Near enough to be uneven: a ribbon whose upper side rises and falls, and catches the light.
    const double length_m = std::hypot(hedge.to.x_m - hedge.from.x_m, hedge.to.y_m - hedge.from.y_m);
    const double uneven = smooth_step(grains, even_below_grains, 2.0 * even_below_grains);
    constexpr double piece_m = 5.0;
    const int pieces = std::clamp(static_cast<int>(length_m / piece_m), 2, Ribbon::most_pieces);
    Ribbon ribbon(painter);
    for (int i = 0; i <= pieces; ++i) {
        // Evenly spaced in the world, not on the screen: the bumps must stay where they grow.
        const double t = static_cast<double>(i) / pieces;
        const CameraPoint here{a.right_m + t * (b.right_m - a.right_m), a.up_m + t * (b.up_m - a.up_m),
                               a.ahead_m + t * (b.ahead_m - a.ahead_m)};
        const ScreenPoint middle = to_screen(painter.projection, here);
        const double half = half_px(here, hedge.from);
        const bool end = i == 0 || i == pieces;
        const double along_m = t * length_m;
        const double swell = 0.5 + 0.28 * std::sin(hedge.from.x_m + along_m / 2.7) +
                             0.22 * std::sin(hedge.from.y_m + along_m / 5.9);  // 0 ... 1
        const double bump = lerp(1.0, end ? 0.35 : 0.70 + 0.55 * swell, uneven);
        ribbon.add({middle.x_px + up * nx * half * bump, middle.y_px + up * ny * half * bump},
                   {middle.x_px - up * nx * half, middle.y_px - up * ny * half},
                   tone(lerp(1.0 + 0.10 * lit, 1.04 + 0.22 * swell, uneven)),
                   tone(lerp(1.0 - 0.14 * lit, 0.76, uneven)));
    }
    ribbon.finish(presence);
}

void draw_tree(const Painter& painter, const Tree& tree, std::uint32_t index) {
    const CameraPoint foot = to_camera(painter.projection, tree.foot);
    if (foot.ahead_m < 25.0 || foot.ahead_m > tree.seen_within_m ||
        beside_view(painter, foot, tree.radius_m * 2))
        return;
    const double scale = pixels_per_m(painter, foot);
    const double wide_px = tree.radius_m * scale;
    const double presence = smooth_step(wide_px / painter.grain_px, 1.7, 3.0) *
                            smooth_step(tree.seen_within_m - foot.ahead_m, 0.0, 500.0);
    if (presence <= 0) return;
    const ScreenPoint base = to_screen(painter.projection, foot);
    const double tall_px = tree.height_m * scale;
    const Rgb light = hazed(painter, scaled(tree.colour, 1.22), foot.ahead_m);
    const Rgb dark = hazed(painter, scaled(tree.colour, 0.70), foot.ahead_m);

    const double grains = wide_px / painter.grain_px;
    if (tree.alone && grains > 3.0)
        draw_long_shadow(painter, tree.foot, tree.radius_m * 0.8, tree.height_m,
                         presence * smooth_step(grains, 3.0, 5.0));
    if (painter.light.direct > 0 && tree.alone && grains > 4.0) {
        const double depth_px = std::max(0.8, wide_px * down_slope(painter, tree.foot, foot));
        soft_patch(painter, {base.x_px + wide_px * 0.7, base.y_px - depth_px * 0.6}, wide_px * 1.7,
                   depth_px * 1.7, hazed(painter, shade, foot.ahead_m),
                   0.5 * presence * smooth_step(grains, 4.0, 6.0));
    }
    const ScreenPoint crown{base.x_px, base.y_px - tall_px * 0.54};
    // One crown far off; near enough to have a shape, three lobes, leaning by the tree's own number.
    const double near_px = tree.alone ? grains : 0.0;
    const double lobed = presence * smooth_step(near_px, 6.5, 10.0),
                 plain = presence * (1.0 - smooth_step(near_px, 9.0, 13.0));
    if (plain > 0) blob(painter, crown, wide_px, tall_px * 0.46, light, dark, plain);
    if (lobed <= 0) return;
    const double lean = static_cast<double>(index % 7) / 7.0 - 0.43;
    blob(painter, {crown.x_px + wide_px * (0.42 + 0.2 * lean), crown.y_px + tall_px * 0.13}, wide_px * 0.62,
         tall_px * 0.31, mix(light, dark, 0.3), dark, lobed);
    blob(painter, {crown.x_px - wide_px * (0.40 - 0.2 * lean), crown.y_px + tall_px * 0.10}, wide_px * 0.62,
         tall_px * 0.33, light, dark, lobed);
    blob(painter, {crown.x_px + wide_px * lean * 0.3, crown.y_px - tall_px * 0.12}, wide_px * 0.72,
         tall_px * 0.34, light, dark, lobed);
}

void draw_wood(const Painter& painter, const GroundLayout& ground, const Wood& wood) {
    const std::span<const WorldPoint> outline = ground.at(wood.corners);
    std::array<WorldPoint, ClippedPolygon::capacity> roof;
    const std::size_t count = std::min(outline.size(), roof.size() - 1);
    double area_twice = 0;
    for (std::size_t i = 0; i < count; ++i) {
        const WorldPoint& a = outline[i];
        const WorldPoint& b = outline[(i + 1) % count];
        area_twice += a.x_m * b.y_m - b.x_m * a.y_m;
        roof[i] = {a.x_m, a.y_m, a.z_m + wood.height_m};
    }
    draw_wood_shadow(painter, outline, wood.height_m, area_twice > 0);
    fill(painter, std::span<const WorldPoint>(roof.data(), count), wood.colour, Edge::overlap);
    mottle(painter, std::span<const WorldPoint>(roof.data(), count), wood.colour);
    for (std::size_t i = 0; i < count; ++i) {
        const WorldPoint& a = outline[i];
        const WorldPoint& b = outline[(i + 1) % count];
        // Only the sides that face the eye.
        const double facing = ((b.y_m - a.y_m) * (painter.projection.eye_x_m - a.x_m) -
                               (b.x_m - a.x_m) * (painter.projection.eye_y_m - a.y_m)) *
                              (area_twice > 0 ? 1.0 : -1.0);
        if (facing > 0) draw_wood_side(painter, a, b, wood);
    }
}

}  // namespace slopewise
