// How the ground moves in the picture, as arrows over it.
#include <algorithm>
#include <cmath>

#include "ui/scene/projection.h"
#include "ui/scene/scene.h"
#include "ui/screens/board_figures.h"
#include "ui/screens/haloed.h"
#include "ui/widgets/paper.h"
#include "ui/widgets/tag.h"

namespace slopewise {
namespace {

constexpr double half_height_rad = 4.0 * 3.14159265358979323846 / 180.0;  // above and below the middle
constexpr float longest_share = 0.13f, head_share = 0.026f, line_share = 0.009f, halo_share = 0.005f;
constexpr float legend_lines = 8;
constexpr double moment_s = 1;  // in which all angles move by less than a degree: a straight piece

ImVec2 pixel_of(const Projection& p, double right_rad, double up_rad) {
    const double level = std::cos(up_rad);
    const WorldPoint far_off{p.eye_x_m + 1e3 * level * std::cos(right_rad),
                             p.eye_y_m + 1e3 * level * std::sin(right_rad),
                             p.eye_z_m + 1e3 * std::sin(up_rad)};
    const ScreenPoint at = to_screen(p, to_camera(p, far_off));
    return {static_cast<float>(at.x_px), static_cast<float>(at.y_px)};
}

// Pixels in a moment of a second.
ImVec2 speed_of(const Projection& p, const BoardsView::Flow& flow) {
    const ImVec2 a = pixel_of(p, flow.from.right_rad, flow.from.up_rad);
    const ImVec2 b = pixel_of(p, flow.from.right_rad + moment_s * flow.right_radps,
                              flow.from.up_rad + moment_s * flow.up_radps);
    return {b.x - a.x, b.y - a.y};
}

float length_of(ImVec2 way) { return std::sqrt(way.x * way.x + way.y * way.y); }

}  // namespace

void draw_motion_figure(ImDrawList* list, const FigureArea& area, const BoardsView::Motion& motion) {
    if (area.width() < 8 || area.height() < 8) return;
    const Palette& c = theme().colour;
    SceneView scene = motion.scene;
    scene.camera.horizontal_fov_rad =
        2 * std::atan(std::tan(half_height_rad) * static_cast<double>(area.width() / area.height()));
    draw_scene(list, area.min, area.max, scene);
    const Projection p = make_projection(
        scene.camera, {double(area.min.x), double(area.min.y), double(area.max.x), double(area.max.y)});
    float fastest = 1e-6f;
    for (const BoardsView::Flow& flow : motion.flow)
        fastest = std::max(fastest, length_of(speed_of(p, flow)));
    const bool revealed = !motion.still_words.empty();
    const float height = area.height(), longest = longest_share * height;
    Stroke stroke{c.accent, std::max(2.0f, line_share * height), std::max(1.0f, halo_share * height)};
    for (const BoardsView::Flow& flow : motion.flow) {
        const ImVec2 speed = speed_of(p, flow), from = pixel_of(p, flow.from.right_rad, flow.from.up_rad);
        const float rate = length_of(speed);
        if (rate <= 0) continue;
        // The near ground moves a hundred times as fast as the far: the root of it can be drawn. Directions
        // are true.
        const float stretch = longest * std::sqrt(rate / fastest) / rate;
        if (revealed) stroke.colour = flow.beyond ? c.good : c.attention;
        haloed_arrow(list, from, {from.x + stretch * speed.x, from.y + stretch * speed.y},
                     head_share * height, stroke);
    }
    if (!revealed) return;
    const ImVec2 still = pixel_of(p, motion.still.right_rad, motion.still.up_rad);
    stroke.colour = c.ink;
    const float radius = 0.03f * height;
    haloed_ring(list, still, radius, stroke);
    const float tag_y = std::clamp(still.y - line_height(TextSize::note) / 2, area.min.y,
                                   std::max(area.min.y, area.max.y - line_height(TextSize::note)));
    draw_tag(list, {still.x + 1.5f * radius, tag_y}, motion.still_words, {c.paper, c.ink, true});
    if (height < legend_lines * line_height(TextSize::note)) return;  // the sentences say it too
    const ImVec2 beyond = draw_tag(list, area.min, "\u2191 beyond: moves away", {c.paper, c.good, true});
    draw_tag(list, {area.min.x, area.min.y + beyond.y}, "\u2193 nearer: moves toward you",
             {c.paper, c.attention, true});
}

}  // namespace slopewise
