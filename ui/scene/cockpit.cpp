#include "ui/scene/cockpit.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "base/units.h"

namespace slopewise {

namespace {

constexpr Rgb cowl_lit = rgb_from_bytes(96, 103, 106);
constexpr Rgb cowl_mid = rgb_from_bytes(64, 69, 72);
constexpr Rgb cowl_deep = rgb_from_bytes(42, 45, 48);
constexpr Rgb shield_edge = rgb_from_bytes(44, 47, 49);
constexpr Rgb shield = rgb_from_bytes(27, 29, 31);

constexpr double shield_below_nose_deg = 2.3;  // the coaming stands nearer the eye, and lower
constexpr double least_shield_share = 0.045;   // of the view's height: never quite out of sight

constexpr int nose_columns = 30, shield_columns = 10;  // the shield is nearly straight

double degree_px(const Projection& p) { return p.focal_px * rad_from_deg(1.0); }

// The cowling under the sky; by night only the panel's own glow shows it.
Rgb in_the_light(const Light& light, const Rgb& own) {
    if (light.dark) return scaled(own, 0.17);
    return {own.r * light.tint.r, own.g * light.tint.g, own.b * light.tint.b};
}

// The cowling falls away to the sides like a shallow dome.
double nose_y_px(const Projection& p, double middle_px, double x_px) {
    const double aside_deg = (x_px - p.centre_x_px) / degree_px(p);
    const double share = aside_deg / 15.0;
    const double square = share * share;
    return middle_px + degree_px(p) * (0.75 * square + 0.85 * square * square);
}

double shield_y_px(const Projection& p, double nose_px, double x_px) {
    const double aside_deg = (x_px - p.centre_x_px) / degree_px(p);
    const double middle_px = nose_px + shield_below_nose_deg * degree_px(p);
    const double lowest_px = p.frame.bottom_px - least_shield_share * (p.frame.bottom_px - p.frame.top_px);
    return std::min(middle_px, lowest_px) + degree_px(p) * 0.0011 * aside_deg * aside_deg;
}

struct Row {
    double offset_px;  // below the edge
    Rgb colour;
    double alpha;
};

// A shape under a curved edge: rows of colour that follow it, down to the bottom of the frame.
template <class EdgeHeight>
void draw_under(const Painter& painter, int columns, EdgeHeight edge_y_px, std::span<const Row> rows) {
    ImDrawList* list = painter.list;
    const PixelRectangle& frame = painter.projection.frame;
    const auto count = static_cast<unsigned>(rows.size());
    list->PrimReserve(columns * static_cast<int>(count - 1) * 6, (columns + 1) * static_cast<int>(count));
    const unsigned base = list->_VtxCurrentIdx;
    for (int i = 0; i <= columns; ++i) {
        const double x_px = frame.left_px + (frame.right_px - frame.left_px) * i / columns;
        const double edge_px = edge_y_px(x_px);
        for (const Row& row : rows) {
            const double y_px = std::min(edge_px + row.offset_px, std::max(frame.bottom_px, edge_px));
            list->PrimWriteVtx({static_cast<float>(x_px), static_cast<float>(y_px)}, painter.white_uv,
                               packed(row.colour, row.alpha));
        }
    }
    for (unsigned i = 0; i < static_cast<unsigned>(columns); ++i) {
        for (unsigned k = 0; k + 1 < count; ++k) {
            const unsigned a = base + i * count + k, b = a + count;
            for (const unsigned corner : {a, b, b + 1, a, b + 1, a + 1})
                list->PrimWriteIdx(static_cast<ImDrawIdx>(corner));
        }
    }
}

}  // namespace

double nose_line_y_px(const Projection& projection, const SceneView& scene) {
    return elevation_to_y_px(projection, scene.body_pitch_rad - scene.look_over_rad);
}

double world_bottom_y_px(const Projection& projection, const SceneView& scene) {
    const double nose_px = nose_line_y_px(projection, scene);
    const PixelRectangle& frame = projection.frame;
    return std::min(frame.bottom_px, std::max(shield_y_px(projection, nose_px, frame.left_px),
                                              shield_y_px(projection, nose_px, frame.right_px)));
}

void draw_cockpit(const Painter& painter, const SceneView& scene) {
    const Projection& p = painter.projection;
    const double nose_px = nose_line_y_px(p, scene), deg = degree_px(p);
    const auto lit = [&painter](const Rgb& own) { return in_the_light(painter.light, own); };
    if (nose_px < p.frame.bottom_px) {
        const Row rows[] = {{-0.5, lit(cowl_lit), 0},
                            {0.5, lit(cowl_lit), 1},
                            {0.6 * deg, lit(cowl_mid), 1},
                            {2.2 * deg, lit(cowl_deep), 1},
                            {60.0 * deg, lit(cowl_deep), 1}};
        draw_under(
            painter, nose_columns, [&](double x_px) { return nose_y_px(p, nose_px, x_px); }, rows);
    }
    const Row rows[] = {{-0.18 * deg, {0, 0, 0}, 0},
                        {-0.5, {0, 0, 0}, 0.28},
                        {0.5, lit(shield_edge), 1},
                        {0.30 * deg, lit(shield), 1},
                        {60.0 * deg, lit(shield), 1}};
    draw_under(
        painter, shield_columns, [&](double x_px) { return shield_y_px(p, nose_px, x_px); }, rows);
}

}  // namespace slopewise
