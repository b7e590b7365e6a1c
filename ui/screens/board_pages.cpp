// The path from the side, the headwind's table, outlines over each other.
#include <algorithm>
#include <array>
#include <cmath>

#include "ui/screens/board_figures.h"
#include "ui/widgets/paper.h"
#include "ui/widgets/profile_panel.h"
#include "ui/widgets/side_profile.h"
#include "ui/widgets/tag.h"

namespace slopewise {
namespace {

float note_px() { return theme().size[static_cast<std::size_t>(TextSize::note)]; }
float stroke_px() { return std::max(2.0f, note_px() * 0.14f); }

// ---- the path from the side ----

// From the ground up to the path; its height above the path, to the right of where that is higher.
void draw_height(ImDrawList* list, const ProfilePanel& panel, const BoardsView::Height& height) {
    const Palette& c = theme().colour;
    const float x = panel.x(height.distance_nm), y = panel.y(height.height_ft);
    list->AddLine({x, panel.max.y}, {x, y}, c.ink_soft, stroke_px() * 0.6f);
    list->AddCircleFilled({x, y}, stroke_px() * 1.6f, c.accent, 24);
    const std::string_view words = height.height.empty() ? std::string_view("?") : height.height;
    const ImVec2 place{x - note_px() * 0.2f, y - line_height(TextSize::note) - note_px() * 0.35f};
    const ImVec2 size = text_extent(TextSize::note, words, true);
    list->AddRectFilled(place, {place.x + size.x, place.y + size.y}, c.paper);
    text_at(list, place, TextSize::note, c.ink, words, true);
}

// ---- the headwind ----

struct HeadwindColumn {
    const char* head;
    const char* unit;
    float from, to;  // shares of the width
};
constexpr std::array<HeadwindColumn, 4> headwind_columns{{{"Wind", "kt", 0, 0.19f},
                                                          {"Ground", "kt", 0.19f, 0.41f},
                                                          {"Sink", "ft/min", 0.45f, 0.71f},
                                                          {"Power", "%", 0.75f, 1}}};

// A number at the column's left, and from there on its bar.
void draw_barred(ImDrawList* list, ImVec2 min, ImVec2 max, std::string_view words, double share,
                 std::string_view widest) {
    const Palette& c = theme().colour;
    const float figure = text_extent(TextSize::note, widest, true).x;
    const float y = (min.y + max.y - note_px()) / 2;
    text_right(list, {min.x + figure, y}, TextSize::note, c.ink, words.empty() ? "?" : words, true);
    const float bar = min.x + figure + note_px() * 0.4f, half = (max.y - min.y) * 0.3f,
                middle = (min.y + max.y) / 2;
    if (share > 0)
        list->AddRectFilled({bar, middle - half},
                            {bar + static_cast<float>(share) * std::max(0.0f, max.x - bar), middle + half},
                            c.accent);
}

// ---- outlines ----

// The world across an outline's panel.
constexpr double rad = 3.14159265358979323846 / 180;
constexpr double up_from_rad = -4.3 * rad, up_to_rad = 0.5 * rad;

void draw_dashed(ImDrawList* list, ImVec2 from, ImVec2 to, ImU32 colour, float width_px) {
    const float dash = note_px() * 0.55f;
    const float x = to.x - from.x, y = to.y - from.y, length = std::sqrt(x * x + y * y);
    const int pieces = std::max(1, static_cast<int>(length / dash)) | 1;  // odd: it ends with a dash
    for (int i = 0; i < pieces; i += 2) {
        const float a = static_cast<float>(i) / static_cast<float>(pieces),
                    b = static_cast<float>(i + 1) / static_cast<float>(pieces);
        list->AddLine({from.x + a * x, from.y + a * y}, {from.x + b * x, from.y + b * y}, colour, width_px);
    }
}

void draw_outline(ImDrawList* list, ImVec2 min, ImVec2 max, const BoardsView::Outline& outline) {
    const Palette& c = theme().colour;
    const float scale = (max.y - min.y) / static_cast<float>(up_to_rad - up_from_rad);  // pixels a radian
    const auto at = [&](const SeenAt& seen) {
        return ImVec2{(min.x + max.x) / 2 + static_cast<float>(seen.right_rad) * scale,
                      max.y - static_cast<float>(seen.up_rad - up_from_rad) * scale};
    };
    list->AddRectFilled(min, max, c.band);
    const float horizon = at({0, 0}).y;
    list->AddRectFilled(min, {max.x, horizon}, c.paper_edge);
    list->AddLine({min.x, horizon}, {max.x, horizon}, c.ink_soft, stroke_px() * 0.6f);
    std::array<ImVec2, 4> seen, usual;
    for (std::size_t i = 0; i < 4; ++i) {
        seen[i] = at(outline.seen[i]);
        usual[i] = at(outline.usual[i]);
    }
    list->AddQuadFilled(seen[0], seen[1], seen[2], seen[3], c.ink_soft);
    for (std::size_t i = 0; i < 4; ++i) {
        // Pale under the dashes, so that they are seen on the runway too.
        list->AddLine(usual[i], usual[(i + 1) % 4], c.paper, stroke_px() * 2);
        draw_dashed(list, usual[i], usual[(i + 1) % 4], c.accent, stroke_px() * 1.2f);
    }
}

}  // namespace

void draw_side_figure(ImDrawList* list, const FigureArea& area, const BoardsView& board,
                      const SideProfileView& flown) {
    if (flown.sector_deg.empty() || area.width() < 12 * note_px() || area.height() < 5 * note_px()) return;
    SideProfileView side = flown;
    side.far_nm = 3.2;
    const Palette& c = theme().colour;
    const float note = note_px();
    const ProfilePanel panel{{area.min.x + 3.4f * note, area.min.y + note * 0.3f},
                             {area.max.x, area.max.y - note * 1.6f},
                             side.far_nm,
                             area.max.x - 2.2f * note,
                             0,
                             1.02 * height_ft(highest_sector_deg(side), side.far_nm)};
    draw_wedge(list, panel, side);
    const float lamp_px = std::clamp(0.95f * light_sector_px(panel, side), 5.0f, note * 0.9f);
    draw_light_sectors(list, panel, side, lamp_px);
    list->AddLine({panel.x(side.far_nm), panel.y(height_ft(side.path_deg, side.far_nm))},
                  {panel.x(0), panel.y(0)}, c.accent, stroke_px() * 1.3f);
    for (const BoardsView::Height& height : board.heights) draw_height(list, panel, height);
    list->AddLine({panel.min.x, panel.max.y}, panel.max, c.ink_soft, stroke_px() * 0.6f);
    draw_distance_axis(list, panel);
}

void draw_headwind_figure(ImDrawList* list, const FigureArea& area, const BoardsView& board) {
    const Palette& c = theme().colour;
    const float line = line_height(TextSize::note), head = 2 * line;
    const auto x = [&](float share) { return area.min.x + share * area.width(); };
    for (const HeadwindColumn& one : headwind_columns) {
        Column column{list, x(one.from), (one.to - one.from) * area.width(), area.min.y};
        paragraph(column, TextSize::note, c.ink_soft, one.head);
        text_at(list, {column.left, area.min.y + line}, TextSize::note, c.ink_soft, one.unit);
    }
    // As many rows as have room for their words, evenly drawn from all.
    const std::size_t count = board.headwinds.size();
    std::size_t every = 1;
    while (every < count && line * std::ceil(float(count) / float(every)) > area.height() - head) ++every;
    const float rows = std::ceil(float(count) / float(every));
    const float pitch = (area.height() - head) / std::max(1.0f, rows);
    float y = area.min.y + head;
    for (std::size_t i = 0; i < count; i += every, y += pitch) {
        const BoardsView::Headwind& row = board.headwinds[i];
        list->AddLine({area.min.x, y}, {area.max.x, y}, c.rule, 1.0f);
        const auto left = [&](std::size_t n) { return ImVec2{x(headwind_columns[n].from), y}; };
        const auto right = [&](std::size_t n) { return ImVec2{x(headwind_columns[n].to), y + pitch}; };
        draw_barred(list, left(0), right(0), row.wind, 0, "25");
        draw_barred(list, left(1), right(1), row.ground_speed, 0, "100");
        draw_barred(list, left(2), right(2), row.sink, row.sink_share, "348");
        draw_barred(list, left(3), right(3), row.power, row.power_share, "100");
    }
}

void draw_outlines_figure(ImDrawList* list, const FigureArea& area, const BoardsView& board) {
    const Palette& c = theme().colour;
    const float between = grid(2), line = line_height(TextSize::note);
    const float count = static_cast<float>(std::max<std::size_t>(1, board.outlines.size()));
    const float each = (area.width() - between * (count - 1)) / count;
    // Room for the trap is kept before it is told, so that nothing moves.
    const float under = 4 * line;
    float left = area.min.x;
    for (const BoardsView::Outline& outline : board.outlines) {
        Column column{list, left, each, area.min.y};
        paragraph(column, TextSize::note, c.ink, outline.name, true);
        const ImVec2 min{left, column.y}, max{left + each, std::max(column.y + line, area.max.y - under)};
        list->PushClipRect(min, max, true);
        draw_outline(list, min, max, outline);
        list->PopClipRect();
        column.y = max.y + grid(0.25f);
        paragraph(column, TextSize::note, c.ink, outline.trap);
        left += each + between;
    }
}

}  // namespace slopewise
