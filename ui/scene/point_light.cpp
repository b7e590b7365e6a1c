#include "ui/scene/point_light.h"
#include "ui/scene/round_shapes.h"

#include <algorithm>
#include <cmath>

#include "base/interpolate.h"

namespace slopewise {

double decades_seen(const Light& light, double intensity_cd, double distance_m) {
    const double near_m = std::max(1.0, distance_m);
    const double lux = intensity_cd * clearness(light.haze, near_m) / (near_m * near_m);
    return std::log10(std::max(1e-12, lux) / light.threshold_lux);
}

void draw_lit_point(const Painter& painter, const ScreenPoint& place, const Rgb& colour, double decades,
                    double largest_px) {
    if (decades <= 0) return;
    const double bright = std::min(decades, 3.5);
    const double radius_px = std::min(largest_px, painter.grain_px * (0.75 + 0.42 * bright));
    // A soft point: full in the middle, gone at twice its radius; a brighter one has a pale heart and a glow.
    if (bright > 1.0)
        glow(painter, place, radius_px * (2.2 + bright), radius_px * (2.2 + bright), colour,
             painter.light.halo * (0.13 * (bright - 1.0) + 0.06));
    soft_patch(painter, place, radius_px * 1.7, radius_px * 1.7,
               mix(colour, {1, 1, 1}, 0.14 * std::max(0.0, bright - 1.2)), smooth_step(decades, 0.0, 0.9));
}

void draw_point_light(const Painter& painter, const PointLight& lamp, double share) {
    const CameraPoint seen = to_camera(painter.projection, lamp.place);
    if (seen.ahead_m < 8.0) return;
    const ScreenPoint place = to_screen(painter.projection, seen);
    const PixelRectangle& visible = painter.visible;
    if (place.x_px < visible.left_px - 20 || place.x_px > visible.right_px + 20 ||
        place.y_px > visible.bottom_px + 20)
        return;
    draw_lit_point(painter, place, lamp.colour,
                   decades_seen(painter.light, share * lamp.intensity_cd, seen.ahead_m),
                   3.0 * painter.grain_px);
}

}  // namespace slopewise
