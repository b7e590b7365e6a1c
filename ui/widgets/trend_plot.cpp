#include "ui/widgets/trend_plot.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <vector>

namespace slopewise {
namespace {

constexpr float bar_step_px = 4;
constexpr float least_session_px = 6;  // nearer together, lines would make a grey wall

float note_px() { return theme().size[static_cast<std::size_t>(TextSize::note)]; }

float mark_px() { return std::max(3.0f, std::round(note_px() * 0.2f)); }  // radius

float hairline() { return std::max(1.0f, std::round(grid(0.125f))); }

std::string number(float value, int decimals) {
    char words[24];
    std::snprintf(words, sizeof words, "%.*f", decimals, static_cast<double>(value));
    return words;
}

void session_lines(ImDrawList* list, const TrendPanel& panel, std::span<const TrendPoint> points) {
    const auto sessions = static_cast<float>(std::ranges::count(points, true, &TrendPoint::begins_session));
    if ((panel.max.x - panel.min.x) / std::max(1.0f, sessions) < least_session_px) return;
    for (std::size_t i = 1; i < points.size(); ++i) {
        if (!points[i].begins_session) continue;
        const float x = std::round((panel.x(i - 1) + panel.x(i)) / 2);
        list->AddRectFilled({x, panel.min.y}, {x + hairline(), panel.max.y}, theme().colour.rule);
    }
}

void mark(ImDrawList* list, const TrendPanel& panel, ImVec2 centre, float value, bool filled) {
    const ImU32 colour = theme().colour.accent;
    const float r = mark_px(), line = std::max(1.0f, r * 0.4f);
    if (value > panel.high) {
        const ImVec2 top{centre.x, panel.min.y - r}, left{centre.x - r, panel.min.y + r},
            right{centre.x + r, panel.min.y + r};
        if (filled) list->AddTriangleFilled(top, right, left, colour);
        else list->AddTriangle(top, right, left, colour, line);
    } else if (filled) {
        list->AddCircleFilled(centre, r, colour, 12);
    } else {
        list->AddCircleFilled(centre, r, theme().colour.paper, 12);
        list->AddCircle(centre, r, colour, 12, line);
    }
}

}  // namespace

TrendPanel trend_panel(const Column& column, float height, std::size_t count, float high) {
    const float words = text_extent(TextSize::note, "0.50").x + note_px() * 0.6f;
    return {{std::round(column.left + words), std::round(column.y + mark_px())},
            {std::round(column.right() - mark_px()), std::round(column.y + height)},
            count,
            high};
}

float pleasant_top_deg(std::span<const TrendPoint> points, float TrendPoint::*value) {
    std::vector<float> values;
    for (const TrendPoint& point : points) values.push_back(point.*value);
    if (values.empty()) return 0.5f;
    // Nineteen of twenty fit below; one wild approach must not press all others flat.
    const std::size_t at = values.size() - 1 - values.size() / 20;
    std::nth_element(values.begin(), values.begin() + static_cast<std::ptrdiff_t>(at), values.end());
    return std::clamp(std::ceil(values[at] * 1.1f / 0.5f) * 0.5f, 0.5f, 2.0f);
}

void draw_trend_frame(ImDrawList* list, const TrendPanel& panel, std::span<const TrendPoint> points,
                      float step, int decimals, const char* unit) {
    const Palette& c = theme().colour;
    session_lines(list, panel, points);
    list->AddLine({panel.min.x, panel.max.y}, {panel.max.x, panel.max.y}, c.ink_soft, 1.0f);
    list->AddLine(panel.min, {panel.min.x, panel.max.y}, c.ink_soft, 1.0f);
    float last_y = 1e9f;
    for (float value = 0; value <= panel.high + 1e-4f; value += step) {
        const float y = panel.y(value);
        list->AddLine({panel.min.x - note_px() * 0.25f, y}, {panel.min.x, y}, c.ink_soft, 1.0f);
        if (last_y - y < note_px() * 1.1f) continue;
        last_y = y;
        const std::string words = number(value, decimals) + (value == 0 ? "" : unit);
        text_right(list, {panel.min.x - note_px() * 0.4f, std::round(y - note_px() / 2)}, TextSize::note,
                   c.ink, words);
    }
}

void draw_attempt_axis(ImDrawList* list, const TrendPanel& panel) {
    const Palette& c = theme().colour;
    const float widest = text_extent(TextSize::note, std::to_string(panel.count)).x + note_px();
    const float y = panel.max.y + note_px() * 0.35f;
    std::size_t step = 1;
    for (const std::size_t next :
         {1U, 2U, 5U, 10U, 20U, 50U, 100U, 200U, 500U, 1000U, 2000U, 5000U, 10000U}) {
        step = next;
        if ((panel.max.x - panel.min.x) * static_cast<float>(step) / static_cast<float>(panel.count) > widest)
            break;
    }
    for (std::size_t number = step; number <= panel.count; number += step) {
        const std::string words = std::to_string(number);
        const float width = text_extent(TextSize::note, words).x, x = panel.x(number - 1);
        list->AddLine({x, panel.max.y}, {x, panel.max.y + note_px() * 0.25f}, c.ink_soft, 1.0f);
        text_at(list, {std::round(std::min(x - width / 2, panel.max.x - width)), y}, TextSize::note, c.ink,
                words);
    }
}

std::size_t attempts_a_mark(const TrendPanel& panel) {
    const float width = panel.max.x - panel.min.x, count = static_cast<float>(panel.count);
    if (count * 1.5f * mark_px() <= width) return 1;
    return std::max<std::size_t>(2, static_cast<std::size_t>(std::ceil(count * bar_step_px / width)));
}

void draw_trend_marks(ImDrawList* list, const TrendPanel& panel, std::span<const TrendPoint> points,
                      float TrendPoint::*value) {
    const std::size_t share = attempts_a_mark(panel);
    for (std::size_t i = 0; i < points.size(); i += share) {
        if (share == 1) {
            mark(list, panel, {panel.x(i), panel.y(points[i].*value)}, points[i].*value, points[i].unaided);
            continue;
        }
        float least = 1e9f, greatest = 0;
        for (std::size_t j = i; j < std::min(i + share, points.size()); ++j) {
            least = std::min(least, points[j].*value);
            greatest = std::max(greatest, points[j].*value);
        }
        const float x = std::round(panel.x(std::min(i + share / 2, points.size() - 1)));
        const float low = panel.y(least), high = std::min(panel.y(greatest), low - hairline());
        list->AddRectFilled({x, high}, {x + bar_step_px / 2, low}, theme().colour.accent);
    }
}

void draw_trend_line(ImDrawList* list, const TrendPanel& panel, std::span<const TrendPoint> points,
                     float TrendPoint::*value, ImU32 colour) {
    const float width = std::max(2.0f, grid(0.25f));
    float last_x = -1e9f;
    std::size_t joined = 0;
    ImVec2 last{};
    const auto end = [&] {
        if (joined == 1) list->AddCircleFilled(last, 1.5f * width, colour, 12);
        list->PathStroke(colour, 0, width);
        joined = 0;
        last_x = -1e9f;
    };
    for (std::size_t i = 0; i < points.size(); ++i) {
        if (points[i].after_long_gap) end();
        if (points[i].*value < 0) continue;
        last = {panel.x(i), panel.y(points[i].*value)};
        ++joined;
        // Nearer than half a pixel nothing more can be seen of a line.
        if (last.x - last_x < 0.5f) continue;
        last_x = last.x;
        list->PathLineTo(last);
    }
    end();
}

}  // namespace slopewise
