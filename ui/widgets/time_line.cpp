#include "ui/widgets/time_line.h"

#include <algorithm>
#include <cmath>
#include <string_view>
#include <vector>

#include "ui/theme.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/paper.h"

namespace slopewise {
namespace {

constexpr float snap_px = 5;

float note_px() { return theme().size[static_cast<std::size_t>(TextSize::note)]; }
float knob_px() { return std::max(7.0f, note_px() * 0.42f); }

struct Line {
    float left = 0, right = 0, y = 0;
    double last_tick = 1;

    float x(double tick) const {
        return left + (right - left) * static_cast<float>(std::clamp(tick / last_tick, 0.0, 1.0));
    }
    double tick(float x_px) const {
        return last_tick *
               static_cast<double>(std::clamp((x_px - left) / std::max(1.0f, right - left), 0.0f, 1.0f));
    }
};

// What stands over the line in words; the other marks are named where the replay stands.
std::string_view label_of(const ReplayMark& mark) {
    if (mark.kind == ReplayMark::Kind::worst) return "worst";
    const std::string_view name = mark.name;
    if (mark.kind == ReplayMark::Kind::gate) return name.substr(0, name.find(" gate"));
    return {};
}

void draw_mark(ImDrawList* list, const Line& line, const ReplayMark& mark) {
    const Palette& c = theme().colour;
    const float x = line.x(static_cast<double>(mark.tick)), size = note_px();
    const float stroke = std::max(1.5f, size * 0.09f), above = line.y - size * 0.62f;
    switch (mark.kind) {
    case ReplayMark::Kind::start:
    case ReplayMark::Kind::end:
        list->AddLine({x, line.y - size * 0.35f}, {x, line.y + size * 0.35f}, c.ink, stroke);
        break;
    case ReplayMark::Kind::gate: list->AddLine({x, line.y - size * 0.75f}, {x, line.y}, c.ink, stroke); break;
    case ReplayMark::Kind::lights:
        list->AddCircle({x, line.y - size * 0.42f}, size * 0.17f, c.ink, 16, stroke * 0.8f);
        break;
    case ReplayMark::Kind::input:
        list->AddLine({x, line.y}, {x, line.y + size * 0.5f}, c.accent, stroke);
        break;
    case ReplayMark::Kind::evidence:
    case ReplayMark::Kind::worst: mark_out(list, {x, above}, size * 0.6f, c.attention); break;
    }
}

// The worst moment's first, then those that leave the others room.
void draw_labels(ImDrawList* list, const Line& line, float top, const ReplayView& replay) {
    struct Span {
        float left, right;
    };
    std::vector<Span> taken;
    const auto put = [&](const ReplayMark& mark, ImU32 ink) {
        const std::string_view words = label_of(mark);
        const float width = text_extent(TextSize::note, words).x, between = note_px() * 0.4f;
        const float left =
            std::clamp(line.x(static_cast<double>(mark.tick)) - width / 2, line.left, line.right - width);
        const bool free = std::none_of(taken.begin(), taken.end(), [&](const Span& other) {
            return left < other.right + between && left + width > other.left - between;
        });
        if (!free) return;
        text_at(list, {std::round(left), top}, TextSize::note, ink, words);
        taken.push_back({left, left + width});
    };
    for (const ReplayMark& mark : replay.marks)
        if (mark.kind == ReplayMark::Kind::worst) put(mark, theme().colour.attention);
    for (const ReplayMark& mark : replay.marks)
        if (mark.kind == ReplayMark::Kind::gate) put(mark, theme().colour.ink);
}

double snapped(const Line& line, const ReplayView& replay, float x_px) {
    const auto away = [&](const ReplayMark& mark) {
        return std::abs(line.x(static_cast<double>(mark.tick)) - x_px);
    };
    const auto nearest =
        std::min_element(replay.marks.begin(), replay.marks.end(),
                         [&](const ReplayMark& a, const ReplayMark& b) { return away(a) < away(b); });
    if (nearest != replay.marks.end() && away(*nearest) <= snap_px) return static_cast<double>(nearest->tick);
    return std::round(line.tick(x_px));
}

}  // namespace

float time_line_height() { return std::round(note_px() * 1.1f + std::max(20.0f, note_px() * 1.5f)); }

std::optional<double> draw_time_line(ImDrawList* list, ImVec2 min, ImVec2 max, const ReplayView& replay) {
    const Palette& c = theme().colour;
    const float knob = knob_px(), thick = std::max(3.0f, note_px() * 0.2f);
    const Line line{min.x + knob, max.x - knob, max.y - std::round(note_px() * 0.62f),
                    std::max(1.0, replay.last_tick)};
    const Press press = press_area("time line", min, {max.x - min.x, max.y - min.y});

    list->AddRectFilled({line.left, line.y - thick / 2}, {line.right, line.y + thick / 2}, c.rule, thick / 2);
    list->AddRectFilled({line.left, line.y - thick / 2}, {line.x(replay.tick), line.y + thick / 2}, c.accent,
                        thick / 2);
    for (const ReplayMark& mark : replay.marks) draw_mark(list, line, mark);
    draw_labels(list, line, min.y, replay);
    const ImVec2 place{line.x(replay.tick), line.y};
    list->AddCircleFilled(place, knob + 2, c.paper, 32);
    list->AddCircleFilled(place, knob, press.held || press.hovered ? c.ink : c.accent, 32);
    if (replay.at_mark) list->AddCircleFilled(place, knob * 0.42f, c.paper, 24);

    if (!press.held) return std::nullopt;
    return snapped(line, replay, ImGui::GetIO().MousePos.x);
}

}  // namespace slopewise
