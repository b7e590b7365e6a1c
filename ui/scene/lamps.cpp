#include "ui/scene/lamps.h"
#include "ui/scene/round_shapes.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <tuple>

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
    out.brightness = lamp.brightness;
    out.seen = lamp.shows && lamp.brightness > 0;
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

namespace {

// Of all lamps alike, so that none is told apart by size.
struct LampSize {
    double radius_px;  // as large as leaves a dark space between neighbours, never below what a pixel shows
    double apart;      // 0 close together ... 1 far enough apart for housings and glow
};

LampSize lamp_size(const Painter& painter, const SceneView& scene) {
    const double gap_px = lamp_gap_px(painter.projection, scene);
    const double image_scale =
        (painter.projection.frame.right_px - painter.projection.frame.left_px) / 1280.0;
    const double largest_px = 3.4 * image_scale, smallest_px = 0.82;
    const double fits_px = gap_px > 0 ? std::min(largest_px, 0.32 * gap_px) : largest_px;
    return {std::max(smallest_px, fits_px), smooth_step(gap_px, 7.0, 16.0)};
}

void draw_housing(const Painter& painter, const LampOnScreen& lamp, const LampSize& size) {
    const double distance_m = painter.projection.focal_px / lamp.pixels_per_m;
    // Behind a white lamp pale grass would swallow it: the unit's own shade sets it off.
    // In haze it goes with everything else.
    soft_patch(painter, lamp.place, size.radius_px * 2.4, size.radius_px * 1.9,
               seen_colour(painter.light, backing, 0.0),
               (0.72 - 0.4 * size.apart) * clearness(painter.light.haze, distance_m));
    if (size.apart <= 0) return;
    const double half_px = 0.75 * lamp.pixels_per_m, tall_px = 0.9 * lamp.pixels_per_m;
    const double foot_px = lamp.place.y_px + tall_px * 0.65;
    ScreenPolygon box;
    box.count = 4;
    box.point = {{{lamp.place.x_px - half_px, foot_px - tall_px},
                  {lamp.place.x_px + half_px, foot_px - tall_px},
                  {lamp.place.x_px + half_px, foot_px},
                  {lamp.place.x_px - half_px, foot_px}}};
    box.colour.fill(packed(seen_colour(painter.light, housing, distance_m)));
    fill(painter, box, Edge::coverage, size.apart);
}

void draw_lamp(const Painter& painter, const LampOnScreen& lamp, const LampSize& size, double gap_px) {
    const double bright = clamp(lamp.brightness, 0.0, 3.5);
    const double presence = smooth_step(lamp.brightness, -0.05, 0.30);
    if (presence <= 0) return;
    // The glow grows with the light that arrives; it may touch its neighbour's, never the neighbour.
    const double reach_px = std::min(size.radius_px * (1.6 + 0.9 * bright), gap_px > 0 ? 0.70 * gap_px : 1e9);
    if (reach_px > size.radius_px * 1.15)
        glow(painter, lamp.place, reach_px * 1.2, reach_px * 1.2, lamp.colour,
             presence * painter.light.halo * (0.22 + 0.16 * bright));
    // A faint lamp is a smaller one.
    const double radius_px = std::max(0.82, size.radius_px * (0.66 + 0.34 * smooth_step(bright, 0.2, 1.8)));
    draw_disc(painter, lamp.place, radius_px, lamp.colour, presence);
    // A bright heart keeps the colour from looking like paint.
    if (radius_px > 2.2)
        draw_disc(painter, lamp.place, radius_px * 0.42, mix(lamp.colour, {1, 1, 1}, 0.2), 0.8 * presence);
}

}  // namespace

void draw_lamps(const Painter& painter, const SceneView& scene) {
    const double gap_px = lamp_gap_px(painter.projection, scene);
    const LampSize size = lamp_size(painter, scene);
    std::array<LampOnScreen, std::tuple_size_v<decltype(scene.lamps)>> lamps;
    const auto count = static_cast<std::size_t>(scene.lamp_count);
    for (std::size_t i = 0; i < count; ++i) {
        lamps[i] = lamp_on_screen(painter.projection, scene.lamps[i]);
        if (lamps[i].standing && !painter.light.dark) draw_housing(painter, lamps[i], size);
    }
    for (std::size_t i = 0; i < count; ++i) {
        if (lamps[i].seen) draw_lamp(painter, lamps[i], size, gap_px);
    }
}

}  // namespace slopewise
