#include "ui/widgets/switches.h"

#include <algorithm>
#include <cmath>

namespace slopewise {
namespace {

float note_height() { return theme().size[static_cast<std::size_t>(TextSize::note)]; }

// A slot with a knob: filled and to the right when on.
void draw_switch(ImDrawList* list, ImVec2 min, ImVec2 size, bool on, bool hovered) {
    const Palette& c = theme().colour;
    const float round = size.y / 2, line = std::max(1.0f, std::round(grid(0.1875f)));
    const ImVec2 max{min.x + size.x, min.y + size.y};
    const ImVec2 knob{on ? max.x - round : min.x + round, min.y + round};
    list->AddRectFilled(min, max, on ? c.accent : (hovered ? c.band : c.paper), round);
    list->AddRect(min, max, c.accent, round, 0, line);
    list->AddCircleFilled(knob, round * 0.62f, on ? c.accent_ink : c.accent, 24);
}

}  // namespace

bool switch_row(Column& column, const char* words, bool on) {
    const Palette& c = theme().colour;
    const float height = std::max(44.0f, std::round(note_height() * 1.7f));
    const ImVec2 min{std::round(column.left), std::round(column.y)};
    const ImVec2 max{min.x + column.width, min.y + height};
    const Press press = press_area(words, min, {column.width, height});
    const float middle = min.y + height / 2;

    const float state_width =
        std::max(text_extent(TextSize::note, "off", true).x, text_extent(TextSize::note, "on", true).x);
    const ImVec2 size{std::round(note_height() * 2.1f), std::round(note_height() * 1.15f)};
    const float switch_left = max.x - size.x;
    draw_switch(column.list, {switch_left, std::round(middle - size.y / 2)}, size, on, press.hovered);
    text_right(column.list, {switch_left - grid(1), middle - note_height() / 2}, TextSize::note,
               on ? c.accent : c.ink_soft, on ? "on" : "off", true);

    Column label{column.list, min.x, switch_left - grid(2) - state_width - min.x, 0};
    label.y = middle - paragraph_height(TextSize::note, words, label.width) / 2;
    paragraph(label, TextSize::note, c.ink, words);
    if (press.focused) focus_ring(column.list, min, max, c.ink);
    column.y = max.y;
    return press.pressed;
}

}  // namespace slopewise
