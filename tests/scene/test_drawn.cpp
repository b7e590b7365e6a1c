// The picture as it comes out in pixels, held to geometry: what a ruler laid on the screen would say.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <string_view>

#include "tests/contact/rasterise.h"
#include "tests/scene/no_window.h"
#include "ui/scene/cockpit.h"
#include "ui/scene/lamps.h"
#include "ui/scene/runway_markings.h"
#include "ui/scene/scene.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

constexpr int width_px = 1920, height_px = 820;

// A painter in clear air, so that one colour stays itself at every distance.
Painter plain_painter(ImDrawList& list, const SceneView& scene) {
    Painter painter;
    painter.list = &list;
    painter.white_uv = ImGui::GetFontTexUvWhitePixel();
    painter.projection = make_projection(scene.camera, {0, 0, width_px, height_px});
    painter.visible = painter.projection.frame;
    return painter;
}

Bitmap developed(const ImDrawList& list) {
    Bitmap picture(width_px, height_px);
    rasterise(picture, list);
    return picture;
}

double red(const Bitmap& p, int x, int y) {
    return p.rgb[static_cast<std::size_t>(3 * (y * p.width + x))] / 255.0;
}
double green(const Bitmap& p, int x, int y) {
    return p.rgb[static_cast<std::size_t>(3 * (y * p.width + x) + 1)] / 255.0;
}

struct Frame {
    Frame() : list(ImGui::GetDrawListSharedData()) {
        list._ResetForNewFrame();
        list.PushClipRectFullScreen();
    }
    NoWindow imgui{width_px, height_px};
    ImDrawList list;
};

// The runway's surface alone, white on black.
Bitmap surface(Frame& frame, const SceneView& scene) {
    const Painter painter = plain_painter(frame.list, scene);
    const RunwayPicture runway_picture = make_runway_picture(scene.runway);
    for (const RunwayMark& mark : runway_picture.marks) {
        if (mark.kind == RunwayMark::Kind::asphalt)
            fill(painter, runway_picture.at(mark), {1, 1, 1}, Edge::coverage, 1.0);
    }
    return developed(frame.list);
}

}  // namespace

// Half a pixel: the least that a display shows.
TEST_CASE("drawn: the runway is as wide in every row, and as long, as geometry has it") {
    for (const double to_aim_m : {3 * 1852.0, 1852.0, 926.0}) {
        CAPTURE(to_aim_m);
        Frame frame;
        const SceneView scene = on_path(to_aim_m);
        const Projection p = make_projection(scene.camera, {0, 0, width_px, height_px});
        const Bitmap picture = surface(frame, scene);
        const double near_px = to_screen(p, to_camera(p, {0, 0, 0})).y_px;
        const double far_px = to_screen(p, to_camera(p, {1500, 0, 0})).y_px;
        double rows_px = 0;  // along the middle
        for (int y = 0; y < height_px; ++y) {
            rows_px += red(picture, width_px / 2, y);
            if (y < far_px + 1 || y > near_px - 2) continue;
            double wide_px = 0;
            for (int x = 0; x < width_px; ++x) wide_px += red(picture, x, y);
            // Where the row's line of sight meets the level ground, the runway is 30 m across.
            const SightAngles sight = sight_angles(p, {width_px / 2.0, y + 0.5});
            const double ahead_m = scene.camera.z_m / std::tan(sight.depression_rad);
            const CameraPoint there = to_camera(p, {scene.camera.x_m + ahead_m, 0, 0});
            CHECK(std::abs(wide_px - 30 * p.focal_px / there.ahead_m) < 0.5);
        }
        CHECK(std::abs(rows_px - (near_px - far_px)) < 0.5);
    }
}

// At 1,920 px over 40 degrees 0.005 degree is 0.23 px; a row is the finest that a bare step can be read to.
TEST_CASE("drawn: the horizon lies in the row where level is") {
    Frame frame;
    const SceneView scene = on_path(1852);
    draw_scene(&frame.list, {0, 0}, {width_px, height_px}, scene);
    const Bitmap picture = developed(frame.list);
    const Projection p = make_projection(scene.camera, {0, 0, width_px, height_px});
    for (const int x : {40, 700, 1880}) {
        int steepest = 0;
        double step = 0;
        const int level = static_cast<int>(elevation_to_y_px(p, 0));
        for (int y = level - 12; y < level + 12; ++y) {
            const double change = std::abs(green(picture, x, y + 1) - green(picture, x, y));
            if (change > step) {
                step = change;
                steepest = y + 1;
            }
        }
        CHECK(step > 0.05);
        CHECK(std::abs(steepest - elevation_to_y_px(p, 0)) <= 1.0);
    }
}

TEST_CASE("drawn: four lamps of the right colours stand where they are, countable from 3 to 0.5 NM") {
    for (const double distance_nm : {3.0, 2.0, 1.0, 0.5}) {
        for (int reds = 0; reds <= 4; ++reds) {
            CAPTURE(distance_nm);
            CAPTURE(reds);
            Frame frame;
            SceneView scene = on_path(distance_nm * 1852.0);
            for (std::size_t i = 0; i < 4; ++i)
                scene.lamps[i] = {300,  -30 - 9.0 * static_cast<double>(i),
                                  0,    static_cast<int>(i) >= reds ? 1.0 : 0.0,
                                  true, 1.5};
            draw_lamps(plain_painter(frame.list, scene), scene);
            const Bitmap picture = developed(frame.list);
            const Projection p = make_projection(scene.camera, {0, 0, width_px, height_px});
            double between = 1.0;  // the brightest that the middle between two lamps becomes
            for (std::size_t i = 0; i < 4; ++i) {
                const ScreenPoint place = lamp_on_screen(p, scene.lamps[i]).place;
                const int x = static_cast<int>(place.x_px), y = static_cast<int>(place.y_px);
                CHECK(red(picture, x, y) > 0.5);
                const bool white = static_cast<int>(i) >= reds;
                CHECK((green(picture, x, y) > 0.75 * red(picture, x, y)) == white);
                // Its light is gathered about its place: the centroid, of the red channel, to half a pixel.
                const double gap_px = lamp_gap_px(p, scene);
                const int reach = std::max(2, static_cast<int>(0.45 * gap_px));
                double sum = 0, sum_x = 0, sum_y = 0;
                for (int dy = -reach; dy <= reach; ++dy) {
                    for (int dx = -reach; dx <= reach; ++dx) {
                        const double light =
                            red(picture, x + dx, y + dy) > 0.5 ? red(picture, x + dx, y + dy) : 0.0;
                        sum += light;
                        sum_x += light * (x + dx + 0.5);
                        sum_y += light * (y + dy + 0.5);
                    }
                }
                CHECK(std::abs(sum_x / sum - place.x_px) < 0.5);
                CHECK(std::abs(sum_y / sum - place.y_px) < 0.5);
                if (i == 0) continue;
                const ScreenPoint inner = lamp_on_screen(p, scene.lamps[i - 1]).place;
                const int middle = static_cast<int>((place.x_px + inner.x_px) / 2);
                const double gap_light = red(picture, middle, y);
                between = std::min(between, 1.0 - gap_light);
            }
            CHECK(between > 0.25);  // a dark space between neighbours
        }
    }
}

TEST_CASE("drawn: the nose hides the runway, and nothing shows below it") {
    Frame frame;
    SceneView scene = on_path(300);
    scene.body_pitch_rad = 8 * deg;  // nose up: the line of the nose is above the horizon
    draw_scene(&frame.list, {0, 0}, {width_px, height_px}, scene);
    const Bitmap picture = developed(frame.list);
    const Projection p = make_projection(scene.camera, {0, 0, width_px, height_px});
    const int nose = static_cast<int>(nose_line_y_px(p, scene)) + 3;
    REQUIRE(nose < elevation_to_y_px(p, 0));
    for (int y = nose; y < height_px; y += 7) {
        CHECK(red(picture, width_px / 2, y) < 0.45);
        CHECK(std::abs(red(picture, width_px / 2, y) - green(picture, width_px / 2, y)) <
              0.05);  // grey, no grass
    }
}
