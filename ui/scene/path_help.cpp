#include "ui/scene/path_help.h"

#include <algorithm>
#include <cmath>

#include "base/units.h"
#include "ui/theme.h"

namespace slopewise {
namespace {

constexpr double beside_rad = rad_from_deg(0.5);  // between it and what it stands beside
constexpr double length_rad = rad_from_deg(1.4);
constexpr double foot_rad = rad_from_deg(0.45);  // of the mark level with the aim point
constexpr double thick_rad = rad_from_deg(0.12);

// How far the runway and its lamps reach to one side (m): +1 right, -1 left.
double reach_m(const SceneView& scene, double side) {
    double reach = scene.runway.width_m / 2;
    for (int i = 0; i < scene.lamp_count; ++i)
        reach = std::max(reach, side * scene.lamps[static_cast<std::size_t>(i)].y_m);
    return reach;
}

// A level or upright bar with a dark edge, so that it is seen before fields and before the night.
void draw_beam(ImDrawList* list, ImVec2 min, ImVec2 max, ImU32 colour, ImU32 edge) {
    list->AddRectFilled({min.x - 1, min.y - 1}, {max.x + 1, max.y + 1}, edge, 1.0f);
    list->AddRectFilled(min, max, colour, 1.0f);
}

ImU32 with_opacity(ImU32 colour, double opacity) {
    const auto alpha = static_cast<ImU32>(std::lround(255.0 * std::clamp(opacity, 0.0, 1.0)));
    return (colour & ~IM_COL32_A_MASK) | (alpha << IM_COL32_A_SHIFT);
}

// A box about a level line from one x to another, whichever is left.
void draw_level(ImDrawList* list, double from_px, double to_px, double y_px, double half_px, ImU32 colour,
                ImU32 edge) {
    const auto left = static_cast<float>(std::min(from_px, to_px)),
               right = static_cast<float>(std::max(from_px, to_px));
    const auto y = static_cast<float>(y_px), half = static_cast<float>(half_px);
    draw_beam(list, {left, y - half}, {right, y + half}, colour, edge);
}

}  // namespace

PathHelpBar path_help_bar(const Projection& projection, const SceneView& scene) {
    const RunwayView& runway = scene.runway;
    const WorldPoint aim{runway.aim_distance_m, 0, runway.slope * runway.aim_distance_m};
    const CameraPoint seen = to_camera(projection, aim);
    if (scene.path_help.opacity <= 0 || seen.ahead_m < near_plane_m) return {};
    const double side = reach_m(scene, 1) <= reach_m(scene, -1) ? 1 : -1;
    const double elevation_rad = std::atan2(aim.z_m - projection.eye_z_m, aim.x_m - projection.eye_x_m);
    PathHelpBar bar;
    bar.seen = true;
    bar.aim_px = elevation_to_y_px(projection, elevation_rad);
    bar.bar_px = elevation_to_y_px(projection, elevation_rad + scene.path_help.over_aim_rad);
    const double beside_px = reach_m(scene, side) * projection.focal_px / seen.ahead_m +
                             projection.focal_px * std::tan(beside_rad);
    bar.inner_px = projection.centre_x_px + side * beside_px;
    bar.outer_px = bar.inner_px + side * projection.focal_px * std::tan(length_rad);
    return bar;
}

void draw_path_help(const Painter& painter, const SceneView& scene) {
    const PathHelpBar bar = path_help_bar(painter.projection, scene);
    if (!bar.seen) return;
    const double opacity = scene.path_help.opacity;
    const ImU32 colour = with_opacity(theme().colour.needle, opacity);
    const ImU32 edge = with_opacity(theme().colour.shelf, 0.7 * opacity);
    const double half_px = std::max(1.5, painter.projection.focal_px * thick_rad / 2);
    const double side = bar.outer_px > bar.inner_px ? 1 : -1;
    // The foot, level with the aim point, and the post from there to the bar: the way the aim point has to
    // go.
    draw_level(painter.list, bar.inner_px, bar.inner_px + side * painter.projection.focal_px * foot_rad,
               bar.aim_px, half_px / 3, colour, edge);
    const double top_px = std::min(bar.bar_px, bar.aim_px), bottom_px = std::max(bar.bar_px, bar.aim_px);
    draw_beam(painter.list, {static_cast<float>(bar.inner_px - half_px / 3), static_cast<float>(top_px)},
              {static_cast<float>(bar.inner_px + half_px / 3), static_cast<float>(bottom_px)}, colour, edge);
    draw_level(painter.list, bar.inner_px, bar.outer_px, bar.bar_px, half_px, colour, edge);
}

}  // namespace slopewise
