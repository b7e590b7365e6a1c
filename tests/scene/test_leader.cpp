// The larger aircraft ahead: as large as it should look, lit as it should be, and no more shown than is
// meant.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include <imgui.h>

#include "tests/check.h"
#include "tests/scene/no_window.h"
#include "ui/scene/leader.h"
#include "ui/scene/scene.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

// It, so far ahead of the eye on a path three degrees steep.
SceneView with_leader(double ahead_m) {
    SceneView scene = on_path(5000);
    scene.leader.there = true;
    scene.leader.x_m = scene.camera.x_m + ahead_m;
    scene.leader.touchdown_x_m = 600;
    scene.leader.path_rad = 3.0 * deg;
    scene.leader.z_m = (scene.leader.touchdown_x_m - scene.leader.x_m) * std::tan(scene.leader.path_rad);
    return scene;
}

Painter painter_of(ImDrawList* list, const SceneView& scene) {
    Painter painter;
    painter.list = list;
    painter.white_uv = ImGui::GetFontTexUvWhitePixel();
    painter.projection = make_projection(scene.camera, {0, 0, 1280, 720});
    painter.light = light_of(scene.sky);
    painter.visible = painter.projection.frame;
    return painter;
}

struct Drawn {
    double left = 1e9, right = -1e9, top = 1e9, bottom = -1e9;
    int vertices = 0;
};

// What is drawn of it alone.
Drawn draw(const SceneView& scene, double time_s = 0.5) {
    NoWindow window;
    ImDrawList* list = ImGui::GetBackgroundDrawList();
    const int before = list->VtxBuffer.Size;
    draw_leader(painter_of(list, scene), scene.leader, scene.sky.headwind_mps, time_s);
    Drawn drawn;
    for (int i = before; i < list->VtxBuffer.Size; ++i) {
        const ImVec2 p = list->VtxBuffer[i].pos;
        drawn.left = std::min(drawn.left, double(p.x));
        drawn.right = std::max(drawn.right, double(p.x));
        drawn.top = std::min(drawn.top, double(p.y));
        drawn.bottom = std::max(drawn.bottom, double(p.y));
        ++drawn.vertices;
    }
    return drawn;
}

}  // namespace

TEST_CASE("leader: its wings span the angle that 34 m span at that distance") {
    for (const double ahead_m : {400.0, 1000.0, 3000.0}) {
        CAPTURE(ahead_m);
        const SceneView scene = with_leader(ahead_m);
        const Drawn drawn = draw(scene);
        // The wing tips lie 6 m behind its wheels.
        const double focal_px = 640.0 / std::tan(scene.camera.horizontal_fov_rad / 2);
        const double span_px = focal_px * 34.0 / (ahead_m - 6.0);
        CHECK_NEAR(drawn.right - drawn.left, span_px,
                   3.0);  // px: a soft pixel to each side, and the pitch of the view
    }
}

TEST_CASE("leader: a larger one is larger in all its parts") {
    SceneView scene = with_leader(1000);
    const Drawn usual = draw(scene);
    scene.leader.span_m = 68;
    const Drawn twice = draw(scene);
    CHECK_NEAR((twice.right - twice.left) / (usual.right - usual.left), 2.0,
               0.1);  // soft pixels, 12 m nearer tips
    CHECK_NEAR((twice.bottom - twice.top) / (usual.bottom - usual.top), 2.0, 0.2);
    const WorldPoint nose = place_on(scene.leader, 17.4, 0, 0), tail = place_on(scene.leader, -17.6, 0, 0);
    CHECK_NEAR(nose.x_m - tail.x_m, 70.0, 1e-9);  // 35 m long at 34 m span
}

TEST_CASE("leader: nothing is drawn where there is none, or it is behind the eye") {
    SceneView scene = with_leader(1000);
    scene.leader.there = false;
    CHECK(draw(scene).vertices == 0);
    CHECK(draw(with_leader(-200)).vertices == 0);
}

TEST_CASE("leader: the line it came down on is drawn only on reveal") {
    SceneView scene = with_leader(1000);
    const int before = draw(scene).vertices;
    scene.leader.path_shown = true;
    CHECK(draw(scene).vertices > before + 100);
}

TEST_CASE("leader: its tyres smoke for two seconds where they touched, and the smoke drifts with the wind") {
    SceneView scene = with_leader(1000);
    const int flying = draw(scene).vertices;
    scene.leader.z_m = 0;
    scene.leader.x_m = 700;  // it has rolled on
    scene.leader.since_touchdown_s = 3.0;
    const int rolling = draw(scene).vertices;
    CHECK(flying > 0);
    int smoking = 0;
    for (const double age_s : {0.0, 0.5, 1.0, 1.9}) {
        scene.leader.since_touchdown_s = age_s;
        smoking += draw(scene).vertices > rolling ? 1 : 0;
    }
    CHECK(smoking == 4);
    scene.leader.since_touchdown_s = tyre_puff_s;
    CHECK(draw(scene).vertices == rolling);
}

TEST_CASE(
    "leader: at night its lamps are seen and not its skin; from behind the white one, and the red beacon "
    "flashes") {
    SceneView scene = with_leader(1500);
    scene.sky.light = SkyView::Light::night;
    scene.sky.ground_lights = false;
    scene.sky.threshold_lux = 1e-6;
    if (!light_of(scene.sky).dark) scene.sky.overcast = true;
    const Drawn steady = draw(scene, 0.5), flashing = draw(scene, 0.05);
    CHECK(steady.vertices > 0);
    CHECK(flashing.vertices > steady.vertices);
    const int by_day = draw(with_leader(1500)).vertices;
    CHECK(steady.vertices < by_day / 2);
}

TEST_CASE("leader: it is part of the whole picture") {
    const auto count = [](const SceneView& scene) {
        NoWindow window;
        ImDrawList* list = ImGui::GetBackgroundDrawList();
        draw_scene(list, {0, 0}, {1280, 720}, scene);
        return list->VtxBuffer.Size;
    };
    SceneView scene = with_leader(1000);
    const int with = count(scene);
    scene.leader.there = false;
    CHECK(with > count(scene));
}
