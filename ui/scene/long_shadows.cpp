#include "ui/scene/long_shadows.h"

#include <algorithm>
#include <cmath>

namespace slopewise {

namespace {

constexpr double longest_m = 80.0;
constexpr double depth = 0.42;
constexpr Rgb shade = rgb_from_bytes(66, 74, 56);

// Along the ground, from the foot to the shadow's end.
WorldPoint thrown(const Light& light, double height_m) {
    const double level = std::sqrt(light.to_sun.x_m * light.to_sun.x_m + light.to_sun.y_m * light.to_sun.y_m);
    const double length_m = std::min(longest_m, height_m * level / std::max(0.02, light.to_sun.z_m));
    return {-light.to_sun.x_m / level * length_m, -light.to_sun.y_m / level * length_m, 0};
}

WorldPoint moved(const WorldPoint& p, const WorldPoint& by, double share) {
    return {p.x_m + by.x_m * share, p.y_m + by.y_m * share, p.z_m};
}

bool any(const Painter& painter, double presence) { return painter.light.glare > 0 && presence > 0; }

}  // namespace

void draw_long_shadow(const Painter& painter, const WorldPoint& foot, double half_breadth_m, double height_m,
                      double presence) {
    if (!any(painter, presence)) return;
    const WorldPoint away = thrown(painter.light, height_m);
    const double length_m = std::sqrt(away.x_m * away.x_m + away.y_m * away.y_m);
    const WorldPoint across{-away.y_m / length_m * half_breadth_m, away.x_m / length_m * half_breadth_m, 0};
    const WorldPoint shoulder = moved(foot, away, 0.8);
    const WorldPoint shape[] = {moved(foot, across, -1), moved(foot, across, 1), moved(shoulder, across, 0.8),
                                moved(foot, away, 1), moved(shoulder, across, -0.8)};
    fill(painter, shape, shade, Edge::coverage, depth * presence);
}

void draw_wall_shadow(const Painter& painter, const WorldPoint& from, const WorldPoint& to, double height_m,
                      double presence) {
    if (!any(painter, presence)) return;
    const WorldPoint away = thrown(painter.light, height_m);
    const WorldPoint shape[] = {from, to, moved(to, away, 1), moved(from, away, 1)};
    fill(painter, shape, shade, Edge::plain, depth * presence);
}

}  // namespace slopewise
