// Nothing appears or goes suddenly: levels of detail fade, so that the eye is drawn to the runway alone.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "tests/contact/rasterise.h"
#include "tests/scene/no_window.h"
#include "ui/scene/scene.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

constexpr int width_px = 640, height_px = 273, block_px = 8;

Bitmap seen_from(double to_aim_m, CountrysideView::Kind kind) {
    SceneView scene = on_path(to_aim_m);
    scene.runway.countryside = {kind, 3};
    ImDrawList list(ImGui::GetDrawListSharedData());
    list._ResetForNewFrame();
    list.PushClipRectFullScreen();
    draw_scene(&list, {0, 0}, {width_px, height_px}, scene);
    Bitmap picture(width_px, height_px);
    rasterise(picture, list);
    return picture;
}

// The largest change of any block's mean, 0 ... 1.
double largest_change(const Bitmap& a, const Bitmap& b) {
    double largest = 0;
    for (int y = 0; y + block_px <= height_px; y += block_px) {
        for (int x = 0; x + block_px <= width_px; x += block_px) {
            int change = 0;
            for (int row = 0; row < block_px; ++row) {
                for (int k = 0; k < 3 * block_px; ++k) {
                    const auto at = static_cast<std::size_t>(3 * ((y + row) * width_px + x) + k);
                    change += int(a.rgb[at]) - int(b.rgb[at]);
                }
            }
            largest = std::max(largest, std::abs(change) / (255.0 * 3 * block_px * block_px));
        }
    }
    return largest;
}

}  // namespace

// A tenth of a second of flight moves what is near by a fraction of a block, and that alone changes a block
// by a few hundredths at its edges. A tree or a hedge that came or went at once would change its block by 0.1
// and more: green on straw differs by 0.25.
TEST_CASE("popping: from one moment to the next no part of the picture jumps") {
    NoWindow imgui(width_px, height_px);
    constexpr double step_m = 0.5;
    for (const auto kind : {CountrysideView::Kind::farmland, CountrysideView::Kind::woodland}) {
        double worst = 0, worst_at_m = 0;
        Bitmap before = seen_from(2330.0 + step_m, kind);
        for (double to_aim_m = 2330.0; to_aim_m > 2140.0; to_aim_m -= step_m) {
            const Bitmap now = seen_from(to_aim_m, kind);
            const double change = largest_change(before, now);
            if (change > worst) {
                worst = change;
                worst_at_m = to_aim_m;
            }
            before = now;
        }
        CAPTURE(worst_at_m);
        MESSAGE("largest change of a block in half a metre: " << worst);
        CHECK(worst < 0.030);
    }
}
