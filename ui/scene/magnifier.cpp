#include "ui/scene/magnifier.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

#include "ui/scene/lamps.h"
#include "ui/theme.h"

namespace slopewise {

namespace {

constexpr double needed_below_px = 7.0;
constexpr int factors[] = {3, 4, 5, 6, 8, 10, 12, 16, 20, 24};
constexpr Rgb inset_ground = rgb_from_bytes(58, 66, 56);
constexpr int bar_lamps = 4;  // of two bars the first is shown

double wanted_gap_px(double image_width_px) { return std::max(17.0, image_width_px * 0.021); }

bool any_seen(const Painter& painter, const SceneView& scene) {
    return std::any_of(scene.lamps.begin(), scene.lamps.begin() + scene.lamp_count,
                       [&](const LampView& lamp) { return lamp_on_screen(painter.projection, lamp).seen; });
}

// One lamp of the inset; for those who do not tell the colours apart, a ring and a letter.
void draw_lens(const Painter& painter, const SceneView& scene, const ScreenPoint& place, double radius_px,
               double white_fraction, const Rgb& colour) {
    const bool white = white_fraction > 0.5;
    draw_disc(painter, place, radius_px, colour);
    if (scene.lamp_shapes && !white) draw_disc(painter, place, radius_px * 0.55, inset_ground);
    if (!scene.lamp_letters) return;
    const char* letter = white ? "W" : "R";
    const ImVec2 extent = text_extent(TextSize::note, letter, true);
    const ImVec2 corner{static_cast<float>(place.x_px) - extent.x / 2,
                        static_cast<float>(place.y_px) - extent.y / 2};
    const Rgb ink = white ? rgb_from_bytes(40, 42, 44) : rgb_from_bytes(255, 246, 238);
    text_at(painter.list, corner, TextSize::note, packed(ink), letter, true);
}

}  // namespace

int magnifier_factor(double gap_px, double image_width_px) {
    if (gap_px <= 0 || gap_px >= needed_below_px) return 0;
    int best = factors[0];
    for (const int factor : factors) {
        if (factor * gap_px <= wanted_gap_px(image_width_px) * 1.12) best = factor;
    }
    return best;
}

double magnifier_bottom_px(double image_width_px) {
    const double unit = theme().unit, words_px = text_extent(TextSize::note, "lights").y;
    return 2 * unit + wanted_gap_px(image_width_px) * 1.7 + words_px + unit * 0.75;
}

void draw_magnifier(const Painter& painter, const SceneView& scene) {
    const PixelRectangle& frame = painter.projection.frame;
    const double image_width_px = frame.right_px - frame.left_px;
    const double gap_px = lamp_gap_px(painter.projection, scene);
    const int factor = magnifier_factor(gap_px, image_width_px);
    if (factor == 0 || !any_seen(painter, scene)) return;

    char label[32];
    std::snprintf(label, sizeof label, "lights \xC3\x97%d", factor);
    const Theme& look = theme();
    const ImVec2 words = text_extent(TextSize::note, label);
    const double unit = look.unit, wanted_px = wanted_gap_px(image_width_px);
    const int count = std::min(bar_lamps, scene.lamp_count);

    // Its size depends on the window alone, so that nothing jumps when the factor changes.
    const double wide_px = std::max((bar_lamps - 1) * wanted_px * 1.12 + wanted_px * 1.5,
                                    static_cast<double>(words.x) + 2 * unit);
    const double right_px = frame.right_px - 2 * unit, top_px = frame.top_px + 2 * unit,
                 left_px = right_px - wide_px;
    const ImVec2 low{static_cast<float>(left_px), static_cast<float>(top_px)},
        high{static_cast<float>(right_px),
             static_cast<float>(frame.top_px + magnifier_bottom_px(image_width_px))};
    const float round = look.unit * 0.5f;
    painter.list->AddRectFilled(low, high,
                                packed(scaled(inset_ground, painter.light.dark ? 0.45 : 1.0), 0.94), round);
    painter.list->AddRect(low, high, packed(rgb_from_bytes(226, 224, 214), 0.55), round);

    double sum_x_px = 0, sum_y_px = 0;
    for (int i = 0; i < count; ++i) {
        const LampOnScreen lamp =
            lamp_on_screen(painter.projection, scene.lamps[static_cast<std::size_t>(i)]);
        sum_x_px += lamp.place.x_px / count;
        sum_y_px += lamp.place.y_px / count;
    }
    const ScreenPoint middle{(left_px + right_px) / 2, top_px + wanted_px * 0.92};
    for (int i = 0; i < count; ++i) {
        const LampOnScreen lamp =
            lamp_on_screen(painter.projection, scene.lamps[static_cast<std::size_t>(i)]);
        if (!lamp.seen) continue;
        const ScreenPoint place{middle.x_px + factor * (lamp.place.x_px - sum_x_px),
                                middle.y_px + factor * (lamp.place.y_px - sum_y_px)};
        draw_lens(painter, scene, place, wanted_px * 0.33,
                  scene.lamps[static_cast<std::size_t>(i)].white_fraction, lamp.colour);
    }
    text_at(painter.list,
            {static_cast<float>(middle.x_px - words.x / 2), high.y - words.y - look.unit * 0.5f},
            TextSize::note, packed(rgb_from_bytes(232, 230, 220)), label);
}

}  // namespace slopewise
