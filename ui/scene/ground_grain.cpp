#include "ui/scene/ground_grain.h"
#include "ui/scene/round_shapes.h"

#include <algorithm>
#include <cmath>

#include "base/interpolate.h"
#include "base/random.h"

namespace slopewise {

namespace {

// One fleck a cell. A size of cell is seen out to so many times itself, and fades there: so each size brings
// about as many flecks as any other, from whatever height, and none appears suddenly.
constexpr double cells_m[] = {48, 24, 12, 6, 3};
constexpr double seen_for_cells = 30.0, whole_for_cells = 15.0;

constexpr Rgb dark = rgb_from_bytes(64, 78, 44);
constexpr Rgb pale = rgb_from_bytes(190, 188, 134);

void draw_fleck(const Painter& painter, const GroundLayout& ground, double cell_m, std::int64_t column,
                std::int64_t row) {
    Random random{static_cast<std::uint64_t>(column) * 0x9E3779B1u +
                  static_cast<std::uint64_t>(row) * 0x85EBCA77u + static_cast<std::uint64_t>(cell_m)};
    const double draw = next_uniform(random), x_share = next_uniform(random), y_share = next_uniform(random);
    const WorldPoint p{(static_cast<double>(column) + x_share) * cell_m,
                       (static_cast<double>(row) + y_share) * cell_m, 0};
    const CameraPoint seen = to_camera(painter.projection, {p.x_m, p.y_m, ground_height_m(ground, p.x_m)});
    if (seen.ahead_m < 8.0) return;
    const double reach_px = cell_m * (0.08 + 0.20 * draw * draw) * pixels_per_m(painter, seen);
    const double flat = std::max(0.02, -seen.up_m / seen.ahead_m);
    const double fade = 1.0 - smooth_step(seen.ahead_m / cell_m, whole_for_cells, seen_for_cells);
    const Rgb colour = seen_colour(painter.light, x_share < 0.62 ? dark : pale, seen.ahead_m);
    soft_patch(painter, to_screen(painter.projection, seen), reach_px, std::max(0.7, 1.3 * reach_px * flat),
               colour, fade * (0.26 + 0.34 * y_share));
}

}  // namespace

void draw_ground_grain(const Painter& painter, const GroundLayout& ground) {
    const Projection& p = painter.projection;
    const double height_m = std::max(1.0, p.eye_z_m - ground_height_m(ground, p.eye_x_m));
    const double lowest_rad = sight_angles(p, {p.centre_x_px, painter.visible.bottom_px}).depression_rad;
    if (lowest_rad <= 0.005) return;
    const double near_m = std::max(10.0, height_m / std::tan(lowest_rad));
    const double half_tangent = (p.frame.right_px - p.frame.left_px) / 2 / p.focal_px;
    for (const double cell_m : cells_m) {
        const double far_m = seen_for_cells * cell_m;
        if (far_m <= near_m) break;  // and so for every smaller one
        const auto first = static_cast<std::int64_t>(std::floor((p.eye_x_m + near_m) / cell_m));
        const auto last = static_cast<std::int64_t>(std::floor((p.eye_x_m + far_m) / cell_m));
        for (std::int64_t column = last; column >= first; --column) {
            const double ahead_m = static_cast<double>(column + 1) * cell_m - p.eye_x_m;
            const double half_m = half_tangent * ahead_m;
            const auto left = static_cast<std::int64_t>(std::floor((p.eye_y_m - half_m) / cell_m));
            const auto right = static_cast<std::int64_t>(std::floor((p.eye_y_m + half_m) / cell_m));
            for (std::int64_t row = left; row <= right; ++row)
                draw_fleck(painter, ground, cell_m, column, row);
        }
    }
}

}  // namespace slopewise
