// The picture that a pilot judges by, on every shipped runway, level and sloping: the aim point lies the
// path's angle under the horizon, and the runway's corners lie where the closed form of a pinhole camera puts
// them.
#include <doctest/doctest.h>

#include <array>
#include <cmath>

#include "tests/contact/stills.h"
#include "ui/scene/projection.h"
#include "ui/scene/runway_markings.h"
#include "ui/scene/scene.h"

using namespace slopewise;

namespace {

constexpr double deg = 3.14159265358979323846 / 180.0;
constexpr double ft_m = 0.3048, nm_m = 1852.0;
constexpr double width_px = 1280, height_px = 547;

// In angles alone: the point's elevation above and azimuth beside the axis, then tangents. No rotation of
// axes, so that no slip in ui/scene/projection.cpp can be here too.
ScreenPoint closed_form(const CameraView& eye, const WorldPoint& point) {
    const double along_m = point.x_m - eye.x_m, below_m = eye.z_m - point.z_m;
    const double under_axis_rad = std::atan2(below_m, along_m) + eye.pitch_rad;
    const double focal_px = width_px / 2 / std::tan(20 * deg);
    const double ahead_m = std::hypot(along_m, below_m) * std::cos(under_axis_rad);
    return {width_px / 2 + focal_px * (point.y_m - eye.y_m) / ahead_m,
            height_px / 2 + focal_px * std::tan(under_axis_rad)};
}

double apart_px(const ScreenPoint& a, const ScreenPoint& b) {
    return std::hypot(a.x_px - b.x_px, a.y_px - b.y_px);
}

// The least distance from a place to any corner of what was drawn.
double nearest_vertex_px(const ImDrawList& list, const ScreenPoint& place) {
    double nearest_px = 1e9;
    for (const ImDrawVert& v : list.VtxBuffer)
        nearest_px = std::min(nearest_px, std::hypot(v.pos.x - place.x_px, v.pos.y - place.y_px));
    return nearest_px;
}

// The least distance from a place to any corner of the asphalt, where it falls on the screen.
double nearest_asphalt_px(const Projection& p, const RunwayPicture& picture, const ScreenPoint& place) {
    double nearest_px = 1e9;
    for (const RunwayMark& mark : picture.marks) {
        if (mark.kind != RunwayMark::Kind::asphalt) continue;
        for (const WorldPoint& corner : picture.at(mark))
            nearest_px = std::min(nearest_px, apart_px(to_screen(p, to_camera(p, corner)), place));
    }
    return nearest_px;
}

}  // namespace

// A flat horizon: the gap between it and the aim point is the path's angle at every distance (Airplane Flying
// Handbook, FAA-H-8083-3C, p. 176). Half a pixel is what one sample a pixel can show.
TEST_CASE("runway picture: from 3 NM to 200 ft every runway lies where geometry puts it") {
    Darkroom darkroom(static_cast<int>(width_px), static_cast<int>(height_px));
    int sloping = 0, places = 0;
    for (const Runway& runway : darkroom.runways()) {
        CAPTURE(runway.id);
        sloping += runway.slope != 0 ? 1 : 0;
        const double half_m = runway.width_m / 2, far_z_m = runway.slope * runway.length_m;
        const WorldPoint aim{runway.aim_distance_m, 0, runway.slope * runway.aim_distance_m};
        const std::array<WorldPoint, 4> corners{{{0, -half_m, 0},
                                                 {0, half_m, 0},
                                                 {runway.length_m, -half_m, far_z_m},
                                                 {runway.length_m, half_m, far_z_m}}};
        for (double to_aim_m = 3 * nm_m; to_aim_m * std::tan(3 * deg) >= 200 * ft_m; to_aim_m -= 150) {
            CAPTURE(to_aim_m);
            const SceneView scene = still(runway, {}, {"", to_aim_m});
            const Projection p = make_projection(scene.camera, {0, 0, width_px, height_px});
            const double gap_rad = sight_angles(p, to_screen(p, to_camera(p, aim))).depression_rad -
                                   sight_angles(p, {width_px / 2, elevation_to_y_px(p, 0)}).depression_rad;
            CHECK(std::abs(gap_rad / deg - 3.0) <= 0.005);

            const RunwayPicture picture = make_runway_picture(scene.runway);
            ImDrawList list(ImGui::GetDrawListSharedData());
            list._ResetForNewFrame();
            list.PushClipRectFullScreen();
            draw_scene(&list, {0, 0}, {width_px, height_px}, scene);
            for (const WorldPoint& corner : corners) {
                const ScreenPoint place = closed_form(scene.camera, corner);
                CHECK(nearest_asphalt_px(p, picture, place) <= 0.5);
                // As drawn, a corner is drawn in by half a pixel and out by half a pixel along its mitre.
                CHECK(nearest_vertex_px(list, place) <= 1.0);
                ++places;
            }
        }
    }
    CHECK(sloping == 2);
    MESSAGE("corners held to half a pixel: ", places);
}
