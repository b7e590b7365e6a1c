#include "ui/scene/sky.h"
#include "ui/scene/round_shapes.h"

#include <algorithm>
#include <cmath>

#include "base/interpolate.h"
#include "base/random.h"
#include "base/units.h"

namespace slopewise {

namespace {

// Soft bands of cloud: middle and reach in degrees of azimuth and elevation.
struct Band {
    double azimuth_deg, elevation_deg, reach_deg, rise_deg, alpha;
};
constexpr Band wisps[] = {{-13.0, 3.2, 9.0, 0.34, 0.30},  {-9.5, 3.55, 6.5, 0.26, 0.26},
                          {-16.5, 2.55, 5.0, 0.20, 0.22}, {8.5, 4.5, 10.0, 0.42, 0.26},
                          {13.5, 4.1, 6.0, 0.26, 0.24},   {5.0, 2.1, 7.0, 0.20, 0.22},
                          {16.0, 1.75, 5.0, 0.15, 0.20},  {-3.0, 5.7, 8.0, 0.36, 0.20}};

// The underside of a closed cloud: broad, flat, darker folds that crowd towards the horizon.
constexpr Band folds[] = {{-16, 1.0, 9, 0.22, 0.30},  {-4, 1.3, 12, 0.26, 0.26}, {12, 0.9, 10, 0.20, 0.30},
                          {-11, 2.3, 13, 0.50, 0.26}, {9, 2.7, 15, 0.60, 0.28},  {-18, 4.0, 12, 0.9, 0.26},
                          {2, 4.6, 16, 1.1, 0.24},    {17, 5.4, 12, 1.2, 0.26},  {-8, 7.2, 17, 1.7, 0.26},
                          {11, 8.6, 18, 2.0, 0.24},   {-15, 11, 16, 2.6, 0.24},  {4, 13, 20, 3.0, 0.22}};

double degree_px(const Painter& painter) { return painter.projection.focal_px * rad_from_deg(1.0); }

double height_of(const Painter& painter, double elevation_deg) {
    return elevation_to_y_px(painter.projection, rad_from_deg(elevation_deg));
}

double azimuth_x_px(const Painter& painter, double azimuth_rad) {
    return painter.projection.centre_x_px + painter.projection.focal_px * std::tan(azimuth_rad);
}

void draw_bands(const Painter& painter, std::span<const Band> bands, const Rgb& colour, double share) {
    const double scale_px = degree_px(painter);
    for (const Band& band : bands) {
        soft_patch(
            painter,
            {azimuth_x_px(painter, rad_from_deg(band.azimuth_deg)), height_of(painter, band.elevation_deg)},
            band.reach_deg * scale_px, band.rise_deg * scale_px, colour, band.alpha * share);
    }
}

// Plain quads, edge to edge: an antialiased seam would show as a line. The lowest reaches a pixel under the
// horizon, which the ground then covers.
void draw_gradient(const Painter& painter) {
    const PixelRectangle& frame = painter.visible;
    const auto& stops = painter.light.sky;
    double below_px = elevation_to_y_px(painter.projection, 0.0) + 1.5;
    ImU32 below = packed(stops[0].colour);
    for (std::size_t i = 1; i < stops.size() && below_px > frame.top_px; ++i) {
        double above_px = height_of(painter, stops[i].elevation_deg);
        if (i + 1 == stops.size()) above_px = std::min(frame.top_px, above_px);
        const ImU32 above = packed(stops[i].colour);
        painter.list->AddRectFilledMultiColor(
            {static_cast<float>(frame.left_px), static_cast<float>(above_px)},
            {static_cast<float>(frame.right_px), static_cast<float>(below_px)}, above, above, below, below);
        below_px = above_px;
        below = above;
    }
}

void draw_stars(const Painter& painter) {
    Random random{77};
    for (int i = 0; i < 70; ++i) {
        const double azimuth_rad = rad_from_deg(-24.0 + 48.0 * next_uniform(random));
        const double elevation_deg = 1.6 + 24.0 * next_uniform(random);
        const double magnitude = next_uniform(random);
        const double seen =
            smooth_step(elevation_deg, 1.0, 9.0) * (0.10 + 0.42 * magnitude * magnitude * magnitude);
        soft_patch(painter, {azimuth_x_px(painter, azimuth_rad), height_of(painter, elevation_deg)},
                   1.15 * painter.grain_px, 1.15 * painter.grain_px, rgb_from_bytes(214, 220, 235), seen);
    }
}

// The sky about the sun, brighter inwards.
void draw_sun(const Painter& painter) {
    const Light& light = painter.light;
    const ScreenPoint sun{azimuth_x_px(painter, light.sun_azimuth_rad),
                          elevation_to_y_px(painter.projection, light.sun_elevation_rad)};
    const double scale_px = degree_px(painter);
    const Rgb warm = rgb_from_bytes(255, 232, 184), white = rgb_from_bytes(255, 248, 226);
    glow(painter, sun, 26 * scale_px, 13 * scale_px, warm, 0.62);
    glow(painter, sun, 9 * scale_px, 7 * scale_px, warm, 0.60);
    glow(painter, sun, 3.2 * scale_px, 3.0 * scale_px, white, 1.0);
    blob(painter, sun, 0.30 * scale_px, 0.30 * scale_px, {1, 1, 0.97}, {1, 0.99, 0.94});
}

// The last light where the sun has gone.
void draw_afterglow(const Painter& painter) {
    const double scale_px = degree_px(painter);
    const ScreenPoint low{azimuth_x_px(painter, painter.light.sun_azimuth_rad), height_of(painter, 0.0)};
    glow(painter, low, 34 * scale_px, 4.4 * scale_px, rgb_from_bytes(246, 180, 112), 0.72);
    glow(painter, low, 16 * scale_px, 2.0 * scale_px, rgb_from_bytes(255, 206, 140), 0.55);
}

}  // namespace

void draw_sky(const Painter& painter) {
    const Light& light = painter.light;
    draw_gradient(painter);
    if (light.cloud > 0) {
        if (!light.dark) {
            draw_bands(painter, folds, scaled(light.sky[3].colour, 0.90), 1.0);
        }
        return;
    }
    if (light.dark) return draw_stars(painter);
    const double clear = clamp(light.direct + (light.hour == SkyView::Light::dusk ? 0.8 : 0.0), 0.0, 1.0);
    if (light.hour == SkyView::Light::dusk) draw_afterglow(painter);
    const Rgb wisp = light.hour == SkyView::Light::day
                         ? rgb_from_bytes(232, 234, 232)
                         : (light.glare > 0 ? rgb_from_bytes(252, 232, 196) : rgb_from_bytes(150, 104, 104));
    draw_bands(painter, wisps, wisp, clear);
    if (light.glare > 0) draw_sun(painter);
}

void draw_glare(const Painter& painter) {
    const Light& light = painter.light;
    if (light.glare <= 0) return;
    const double scale_px = degree_px(painter);
    const ScreenPoint sun{azimuth_x_px(painter, light.sun_azimuth_rad),
                          elevation_to_y_px(painter.projection, light.sun_elevation_rad)};
    const Rgb warm = rgb_from_bytes(255, 236, 196);
    glow(painter, sun, 30 * scale_px, 17 * scale_px, warm, 0.66 * light.glare);
    glow(painter, sun, 12 * scale_px, 9 * scale_px, {1, 0.98, 0.92}, 0.62 * light.glare);
}

bool lit_ground_in_view(const Painter& painter, double height_m) {
    if (!painter.light.dark) return true;
    const double lowest_rad =
        sight_angles(painter.projection, {painter.projection.centre_x_px, painter.visible.bottom_px})
            .depression_rad;
    return height_m < landing_light_reach_m * std::tan(lowest_rad);
}

void draw_darkness(const Painter& painter, double height_m) {
    if (!painter.light.dark) return;
    constexpr double rows_m[] = {1e6, landing_light_reach_m, 330, 250, 190, 145, 110, 80, 55, 30};
    const PixelRectangle& frame = painter.visible;
    const auto veil = [&painter](double distance_m) {
        const double lit =
            std::exp(-square(distance_m / 150.0)) * (1.0 - 0.55 * smooth_step(90.0 - distance_m, 0, 80));
        return packed(painter.light.haze.colour, distance_m >= landing_light_reach_m ? 1.0 : 1.0 - lit);
    };
    // The plain's horizon itself belongs to the sky's glow.
    double above_px = elevation_to_y_px(painter.projection, 0.0);
    ImU32 above = packed(painter.light.haze.colour);
    for (std::size_t i = 1; i <= std::size(rows_m) && above_px < frame.bottom_px; ++i) {
        const bool last = i == std::size(rows_m);
        const double below_px =
            last ? frame.bottom_px + 1
                 : elevation_to_y_px(painter.projection, -std::atan2(std::max(0.5, height_m), rows_m[i]));
        const ImU32 below = veil(rows_m[last ? i - 1 : i]);
        painter.list->AddRectFilledMultiColor(
            {static_cast<float>(frame.left_px), static_cast<float>(above_px)},
            {static_cast<float>(frame.right_px), static_cast<float>(below_px)}, above, above, below, below);
        above_px = below_px;
        above = below;
    }
}

}  // namespace slopewise
