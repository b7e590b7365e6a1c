#include "ui/scene/lamps.h"

#include <algorithm>
#include <cmath>

#include "base/interpolate.h"
#include "base/units.h"
#include "ui/theme.h"

namespace slopewise {

namespace {

constexpr Rgb housing = rgb_from_bytes(70, 74, 72);
constexpr Rgb backing = rgb_from_bytes(52, 62, 46);

}  // namespace

Rgb lamp_colour(double white_fraction) {
    const Palette& colour = theme().colour;
    return mix(unpacked(colour.lamp_red), unpacked(colour.lamp_white), clamp(white_fraction, 0.0, 1.0));
}

LampOnScreen lamp_on_screen(const Projection& projection, const LampView& lamp) {
    LampOnScreen out;
    const CameraPoint seen = to_camera(projection, {lamp.x_m, lamp.y_m, lamp.z_m});
    if (seen.ahead_m < 5.0) return out;
    out.place = to_screen(projection, seen);
    out.pixels_per_m = projection.focal_px / seen.ahead_m;
    out.colour = lamp_colour(lamp.white_fraction);
    out.seen = lamp.shows;
    out.standing = true;
    return out;
}

double lamp_gap_px(const Projection& projection, const SceneView& scene) {
    if (scene.lamp_count < 2) return 0;
    const LampOnScreen a = lamp_on_screen(projection, scene.lamps[0]),
                       b = lamp_on_screen(projection, scene.lamps[1]);
    if (!a.standing || !b.standing) return 0;
    return std::hypot(a.place.x_px - b.place.x_px, a.place.y_px - b.place.y_px);
}

void draw_disc(const Painter& painter, const ScreenPoint& centre, double radius_px, const Rgb& colour,
               double alpha) {
    constexpr std::size_t corners = 14;
    ScreenPolygon disc;
    disc.count = corners;
    const ImU32 c = packed(colour);
    // The polygon that has the disc's area, so that small discs keep their light.
    const double grown_px = radius_px * std::sqrt(2 * pi / (corners * std::sin(2 * pi / corners)));
    for (std::size_t i = 0; i < corners; ++i) {
        const double angle = 2 * pi * static_cast<double>(i) / corners;
        disc.point[i] = {centre.x_px + grown_px * std::cos(angle), centre.y_px + grown_px * std::sin(angle)};
        disc.colour[i] = c;
    }
    fill(painter, disc, Edge::coverage, alpha);
}

void draw_lamps(const Painter& painter, const SceneView& scene) {
    const double gap_px = lamp_gap_px(painter.projection, scene);
    const double image_scale =
        (painter.projection.frame.right_px - painter.projection.frame.left_px) / 1280.0;
    // As large as leaves a dark space between neighbours, and never below the least that a pixel shows.
    const double largest_px = 3.4 * image_scale, smallest_px = 0.82;
    const double radius_px =
        std::max(smallest_px, std::min(largest_px, gap_px > 0 ? 0.32 * gap_px : largest_px));
    const double apart = smooth_step(gap_px, 7.0, 16.0);

    for (int i = 0; i < scene.lamp_count; ++i) {
        const LampOnScreen lamp =
            lamp_on_screen(painter.projection, scene.lamps[static_cast<std::size_t>(i)]);
        if (!lamp.standing) continue;
        // Behind a white lamp pale grass would swallow it: the unit's own shade sets it off.
        soft_patch(painter, lamp.place, radius_px * 2.4, radius_px * 1.9, backing, 0.72 - 0.4 * apart);
        if (apart > 0) {
            const double half_px = 0.75 * lamp.pixels_per_m, tall_px = 0.9 * lamp.pixels_per_m;
            ScreenPolygon box;
            box.count = 4;
            const double foot_px = lamp.place.y_px + tall_px * 0.65;
            box.point = {{{lamp.place.x_px - half_px, foot_px - tall_px},
                          {lamp.place.x_px + half_px, foot_px - tall_px},
                          {lamp.place.x_px + half_px, foot_px},
                          {lamp.place.x_px - half_px, foot_px}}};
            box.colour.fill(packed(housing));
            fill(painter, box, Edge::coverage, apart);
        }
    }
    for (int i = 0; i < scene.lamp_count; ++i) {
        const LampOnScreen lamp =
            lamp_on_screen(painter.projection, scene.lamps[static_cast<std::size_t>(i)]);
        if (!lamp.seen) continue;
        soft_patch(painter, lamp.place, radius_px * 3.2, radius_px * 3.2, lamp.colour, 0.34 * apart);
        draw_disc(painter, lamp.place, radius_px, lamp.colour);
        // A bright heart keeps the colour from looking like paint.
        if (radius_px > 2.2)
            draw_disc(painter, lamp.place, radius_px * 0.42, mix(lamp.colour, {1, 1, 1}, 0.2), 0.8);
    }
}

}  // namespace slopewise
