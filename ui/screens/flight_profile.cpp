#include "ui/screens/flight_profile.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "ui/widgets/paper.h"
#include "ui/widgets/side_profile.h"

namespace slopewise {
namespace {

constexpr float width_share = 0.31f, upright_width_share = 0.6f, height_share = 0.4f;  // of the view

// What of the screen holds some points.
struct Extent {
    double left = 1e9, top = 1e9, right = -1e9, bottom = -1e9;

    void add(const ScreenPoint& p) {
        left = std::min(left, p.x_px);
        right = std::max(right, p.x_px);
        top = std::min(top, p.y_px);
        bottom = std::max(bottom, p.y_px);
    }
    bool meets(ImVec2 min, ImVec2 max, double margin) const {
        return left - margin < static_cast<double>(max.x) && right + margin > static_cast<double>(min.x) &&
               top - margin < static_cast<double>(max.y) && bottom + margin > static_cast<double>(min.y);
    }
};

Extent runway_extent(const Projection& projection, const RunwayView& runway) {
    const double half_m = runway.width_m / 2, end_m = runway.length_m,
                 rise_m = runway.length_m * runway.slope;
    const std::array<WorldPoint, 4> corners{
        {{0, -half_m, 0}, {0, half_m, 0}, {end_m, half_m, rise_m}, {end_m, -half_m, rise_m}}};
    const ClippedPolygon seen = clip_near(projection, corners);
    Extent extent;
    for (std::size_t i = 0; i < seen.count; ++i) extent.add(to_screen(projection, seen.point[i]));
    return extent;
}

}  // namespace

bool covers_runway(const Projection& projection, const SceneView& scene, ImVec2 min, ImVec2 max) {
    const double margin_px = static_cast<double>(grid(1));
    if (runway_extent(projection, scene.runway).meets(min, max, margin_px)) return true;
    for (int i = 0; i < scene.lamp_count; ++i) {
        const LampView& lamp = scene.lamps[static_cast<std::size_t>(i)];
        const CameraPoint point = to_camera(projection, {lamp.x_m, lamp.y_m, lamp.z_m});
        if (point.ahead_m < near_plane_m) continue;
        Extent extent;
        extent.add(to_screen(projection, point));
        if (extent.meets(min, max, margin_px)) return true;
    }
    return false;
}

ImVec2 profile_inset_size(ImVec2 view_max) {
    const bool upright = view_max.x < 1.5f * view_max.y;
    return {(upright ? upright_width_share : width_share) * view_max.x,
            (upright ? 0.3f : height_share) * view_max.y};
}

void draw_profile_inset(ImDrawList* list, ImVec2 scene_max, ImVec2 view_max, ImVec2 corner,
                        const FlightView& flight) {
    if (flight.side_profile.flown.empty()) return;
    const ImVec2 size = profile_inset_size(view_max);
    const ImVec2 min{corner.x, std::round(corner.y)};
    const ImVec2 max{std::round(min.x + size.x), std::round(min.y + size.y)};
    const Projection projection = make_projection(
        flight.scene.camera, {0, 0, static_cast<double>(scene_max.x), static_cast<double>(scene_max.y)});
    if (covers_runway(projection, flight.scene, min, max)) return;
    draw_side_profile(list, min, max, flight.side_profile);
}

}  // namespace slopewise
