#include "ui/scene/sky.h"

#include <algorithm>
#include <cmath>

#include "base/interpolate.h"
#include "base/units.h"

namespace slopewise {

namespace {

constexpr Rgb milky = rgb_from_bytes(206, 211, 212);  // thick haze: sky and ground run together

struct Stop {
    double elevation_deg;
    Rgb colour;
};
constexpr Stop stops[] = {{-0.1, rgb_from_bytes(217, 222, 220)}, {0.7, rgb_from_bytes(209, 219, 223)},
                          {2.4, rgb_from_bytes(189, 207, 220)},  {6.0, rgb_from_bytes(163, 190, 212)},
                          {14.0, rgb_from_bytes(128, 164, 196)}, {35.0, rgb_from_bytes(94, 134, 176)}};

// Wisps of high cloud: middle and reach in degrees of azimuth and elevation.
struct Wisp {
    double azimuth_deg, elevation_deg, reach_deg, rise_deg, alpha;
};
constexpr Wisp wisps[] = {{-13.0, 3.2, 9.0, 0.34, 0.30},  {-9.5, 3.55, 6.5, 0.26, 0.26},
                          {-16.5, 2.55, 5.0, 0.20, 0.22}, {8.5, 4.5, 10.0, 0.42, 0.26},
                          {13.5, 4.1, 6.0, 0.26, 0.24},   {5.0, 2.1, 7.0, 0.20, 0.22},
                          {16.0, 1.75, 5.0, 0.15, 0.20},  {-3.0, 5.7, 8.0, 0.36, 0.20}};

double thickness(double visibility_m) { return 1.0 - smooth_step(visibility_m, 2500.0, 14000.0); }

}  // namespace

Haze haze_for(double visibility_m) {
    // Far ground is bluer and a shade darker than the sky above it, so that the horizon stays a line.
    const Rgb distant_ground = rgb_from_bytes(168, 180, 183);
    return {mix(distant_ground, milky, thickness(visibility_m)), 3.0 / std::max(500.0, visibility_m)};
}

void draw_sky(const Painter& painter, double visibility_m) {
    const PixelRectangle& frame = painter.visible;
    const double haze = thickness(visibility_m);
    const auto colour_of = [haze](const Stop& stop) {
        return packed(
            mix(stop.colour, milky, haze * (1.0 - 0.4 * smooth_step(stop.elevation_deg, 1.0, 20.0))));
    };
    const auto height_of = [&painter](double elevation_deg) {
        return elevation_to_y_px(painter.projection, rad_from_deg(elevation_deg));
    };

    // Plain quads, edge to edge: an antialiased seam would show as a line. The lowest reaches a pixel
    // under the horizon, which the ground then covers.
    ImDrawList* list = painter.list;
    double below_px = elevation_to_y_px(painter.projection, 0.0) + 1.5;
    ImU32 below = colour_of(stops[0]);
    for (std::size_t i = 1; i < std::size(stops) && below_px > frame.top_px; ++i) {
        const double above_px = i + 1 == std::size(stops)
                                    ? std::min(frame.top_px, height_of(stops[i].elevation_deg))
                                    : height_of(stops[i].elevation_deg);
        const ImU32 above = colour_of(stops[i]);
        list->AddRectFilledMultiColor({static_cast<float>(frame.left_px), static_cast<float>(above_px)},
                                      {static_cast<float>(frame.right_px), static_cast<float>(below_px)},
                                      above, above, below, below);
        below_px = above_px;
        below = above;
    }
    for (const Wisp& wisp : wisps) {
        const double x_px = painter.projection.centre_x_px +
                            painter.projection.focal_px * std::tan(rad_from_deg(wisp.azimuth_deg));
        const double scale_px = painter.projection.focal_px * rad_from_deg(1.0);
        soft_patch(painter, {x_px, height_of(wisp.elevation_deg)}, wisp.reach_deg * scale_px,
                   wisp.rise_deg * scale_px, rgb_from_bytes(232, 234, 232), wisp.alpha * (1.0 - haze));
    }
}

}  // namespace slopewise
