// The drawn country and the whole picture: what may stand where, what may be covered, what a frame costs.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include <imgui.h>

#include "tests/scene/no_window.h"
#include "ui/scene/cockpit.h"
#include "ui/scene/designation.h"
#include "ui/scene/ground_layout.h"
#include "ui/scene/magnifier.h"
#include "ui/scene/scene.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

bool on_strip(const RunwayView& r, const WorldPoint& p) {
    return std::abs(p.y_m) < strip_half_width_m(r.width_m) && p.x_m > -strip_overrun_m &&
           p.x_m < r.length_m + strip_overrun_m;
}

}  // namespace

TEST_CASE("ground: nothing stands on the runway or its strip, whatever its length") {
    for (const double length_m : {600.0, 1500.0, 2600.0}) {
        CAPTURE(length_m);
        const RunwayView r = runway(length_m);
        const GroundLayout ground = make_ground(r);
        for (const Tree& t : ground.trees) CHECK_FALSE(on_strip(r, t.foot));
        for (const House& h : ground.houses) CHECK_FALSE(on_strip(r, h.middle));
        for (const Hedge& h : ground.hedges) {
            CHECK_FALSE(on_strip(r, h.from));
            CHECK_FALSE(on_strip(r, h.to));
        }
        for (const Wood& w : ground.woods) {
            for (const WorldPoint& p : ground.at(w.corners)) CHECK_FALSE(on_strip(r, p));
        }
    }
}

TEST_CASE("ground: the same runway always has the same country around it") {
    const GroundLayout a = make_ground(runway()), b = make_ground(runway());
    REQUIRE(a.corners.size() == b.corners.size());
    REQUIRE(a.standing.size() == b.standing.size());
    const bool same = std::equal(a.corners.begin(), a.corners.end(), b.corners.begin(),
                                 [](const WorldPoint& p, const WorldPoint& q) {
                                     return p.x_m == q.x_m && p.y_m == q.y_m && p.z_m == q.z_m;
                                 });
    CHECK(same);
}

TEST_CASE("ground: the fields cover the country without gap or overlap") {
    const GroundLayout ground = make_ground(runway());
    double sum_m2 = 0;
    for (const FieldNode& node : ground.fields) {
        if (node.far_half < 0) sum_m2 += node.area_m2;
    }
    CHECK(std::abs(sum_m2 - ground.fields.front().area_m2) < 1.0);
}

TEST_CASE("ground: standing things are kept far to near") {
    const GroundLayout ground = make_ground(runway());
    CHECK(std::is_sorted(ground.standing.begin(), ground.standing.end(),
                         [](const StandingThing& a, const StandingThing& b) { return a.x_m > b.x_m; }));
}

TEST_CASE("cockpit: the nose stands look_over below the body axis and hides no aim point on the path") {
    for (const double body_pitch_deg : {-4.0, -3.0, 0.0, 2.0}) {
        SceneView scene = on_path(1852);
        scene.body_pitch_rad = body_pitch_deg * deg;
        const Projection p = make_projection(scene.camera, {0, 0, 1280, 547});
        const double nose_px = nose_line_y_px(p, scene);
        const double depression_deg = sight_angles(p, {640, nose_px}).depression_rad / deg;
        CHECK(std::abs(depression_deg - (5.5 - body_pitch_deg)) < 1e-9);
        CHECK(nose_px > elevation_to_y_px(p, -3 * deg));
    }
}

TEST_CASE("magnifier: it says by how much, and goes when the lights are seven pixels apart") {
    CHECK(magnifier_factor(2.85, 1280) == 10);
    CHECK(magnifier_factor(6.9, 1280) >= 3);
    CHECK(magnifier_factor(7.0, 1280) == 0);
    CHECK(magnifier_factor(0.0, 1280) == 0);
}

TEST_CASE("designation: the other end is half a turn away") {
    CHECK(opposite_designator("27") == "09");
    CHECK(opposite_designator("09") == "27");
    CHECK(opposite_designator("18") == "36");
    CHECK(opposite_designator("36") == "18");
    CHECK(opposite_designator("04L") == "22R");
    CHECK(opposite_designator("") == "");
}

TEST_CASE("designation: every digit has strokes, within its height") {
    for (const char* digit : {"0", "1", "2", "3", "4", "5", "6", "7", "8", "9", "L", "C", "R"}) {
        CAPTURE(digit);
        const auto strokes = designation_strokes(digit, 1.0);
        CHECK(strokes.size() >= 2);
        for (const StrokePiece& piece : strokes) {
            for (const WorldPoint& corner : piece.corner) {
                CHECK(corner.x_m > -0.8);
                CHECK(corner.x_m < designation_height_m + 0.8);
                CHECK(std::abs(corner.y_m) < 3.6);
            }
        }
    }
}

TEST_CASE("scene: a frame stays within its triangles and every corner is a number") {
    NoWindow imgui;
    for (const double to_aim_m : {5556.0, 3704.0, 1852.0, 926.0, 300.0, 40.0}) {
        for (const double path_deg : {2.0, 3.0, 4.5}) {
            CAPTURE(to_aim_m);
            CAPTURE(path_deg);
            ImDrawList list(ImGui::GetDrawListSharedData());
            list._ResetForNewFrame();
            draw_scene(&list, {0, 0}, {1280, 547}, on_path(to_aim_m, path_deg));
            // A half more than the busiest of these views took with pylons, traffic and the ground's grain in
            // it.
            CHECK(list.IdxBuffer.Size / 3 < 18000);
            CHECK(list.IdxBuffer.Size / 3 > 500);
            bool finite = true;
            for (const ImDrawVert& v : list.VtxBuffer)
                finite = finite && std::isfinite(v.pos.x) && std::isfinite(v.pos.y);
            CHECK(finite);
        }
    }
}

TEST_CASE("scene: odd views are drawn without harm") {
    NoWindow imgui;
    ImDrawList list(ImGui::GetDrawListSharedData());
    list._ResetForNewFrame();
    SceneView past_the_end = on_path(-4000);  // flown by, still in the air
    past_the_end.camera.z_m = 150;
    draw_scene(&list, {0, 0}, {1280, 547}, past_the_end);
    SceneView on_ground = on_path(1.0);
    on_ground.camera.z_m = 1.2;
    draw_scene(&list, {0, 0}, {1280, 547}, on_ground);
    SceneView nose_high = on_path(1000);
    nose_high.camera.pitch_rad = 25 * deg;
    nose_high.body_pitch_rad = 25 * deg;
    draw_scene(&list, {0, 0}, {1280, 547}, nose_high);
    SceneView no_lights = on_path(1000);
    no_lights.lamp_count = 0;
    draw_scene(&list, {0, 0}, {300, 120}, no_lights);
    draw_scene(&list, {0, 0}, {3, 3}, no_lights);
    for (const ImDrawVert& v : list.VtxBuffer) REQUIRE(std::isfinite(v.pos.x + v.pos.y));
}

TEST_CASE("magnifier: letters and shapes are shown when asked for, and it goes when no lamp is seen") {
    NoWindow imgui;
    const auto vertices = [](bool letters, bool shapes, double brightness) {
        SceneView scene = on_path(3 * 1852.0);
        scene.lamp_letters = letters;
        scene.lamp_shapes = shapes;
        for (LampView& lamp : scene.lamps) lamp.brightness = brightness;
        ImDrawList list(ImGui::GetDrawListSharedData());
        list._ResetForNewFrame();
        draw_scene(&list, {0, 0}, {1280, 547}, scene);
        return list.VtxBuffer.Size;
    };
    const int plain = vertices(false, false, 1.0);
    CHECK(vertices(true, false, 1.0) == plain + 4 * 4);             // four letters of four corners
    CHECK(vertices(false, true, 1.0) > plain);                      // the middles of two rings
    CHECK(vertices(false, false, -0.5) < plain - 4 * 28 - 11 * 4);  // no discs, no words
}
