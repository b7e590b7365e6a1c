#include "ui/widgets/chooser.h"

#include <algorithm>
#include <cmath>

namespace slopewise {
namespace {

float note_height() { return theme().size[static_cast<std::size_t>(TextSize::note)]; }

bool arrow_press(Column& column, const char* name, ImVec2 min, float side, bool onwards) {
    const Palette& c = theme().colour;
    const ImVec2 max{min.x + side, min.y + side};
    const Press press = press_area(name, min, {side, side});
    const float inset = std::round(side * 0.1f), arm = side * 0.15f, to = onwards ? arm : -arm;
    const ImVec2 middle{min.x + side / 2, min.y + side / 2};
    if (press.hovered)
        column.list->AddRectFilled({min.x + inset, min.y + inset}, {max.x - inset, max.y - inset}, c.band,
                                   grid(0.5f));
    column.list->AddRect({min.x + inset, min.y + inset}, {max.x - inset, max.y - inset}, c.accent, grid(0.5f),
                         0, std::max(1.0f, std::round(grid(0.1875f))));
    column.list->AddTriangleFilled({middle.x - to * 0.7f, middle.y - arm}, {middle.x + to, middle.y},
                                   {middle.x - to * 0.7f, middle.y + arm}, c.accent);
    if (press.focused) focus_ring(column.list, min, max, c.ink);
    return press.pressed;
}

}  // namespace

std::optional<int> chooser(Column& column, const char* name, std::span<const std::string> choices, int chosen,
                           bool lit) {
    const Palette& c = theme().colour;
    const float side = std::max(44.0f, std::round(note_height() * 1.7f));
    const int count = static_cast<int>(choices.size());
    float widest = 0;
    for (const std::string& one : choices)
        widest = std::max(widest, text_extent(TextSize::note, one, true).x);
    const float whole = std::min(widest + 2 * side + grid(2), column.width);
    const float mark = grid(1.25f), name_left = column.left + mark + grid(1);
    const bool beside =
        name_left - column.left + text_extent(TextSize::note, name).x + grid(1) + whole <= column.width;
    const float name_middle = column.y + (beside ? side : note_height() * 1.3f) / 2;
    const ImVec2 disc{column.left + mark / 2 + grid(0.25f), name_middle};
    if (lit) column.list->AddCircleFilled(disc, mark / 2, c.accent, 24);
    else column.list->AddCircle(disc, mark / 2, c.rule, 24, std::max(1.0f, std::round(grid(0.1875f))));
    text_at(column.list, {name_left, name_middle - note_height() / 2}, TextSize::note, c.ink, name, lit);
    if (!beside) column.y += note_height() * 1.3f;

    const float left = std::round(column.right() - whole), y = std::round(column.y);
    std::optional<int> wanted;
    ImGui::PushID(name);
    if (arrow_press(column, "before", {left, y}, side, false)) wanted = (chosen + count - 1) % count;
    if (arrow_press(column, "next", {column.right() - side, y}, side, true)) wanted = (chosen + 1) % count;
    ImGui::PopID();
    Column middle{column.list, left + side + grid(0.5f), whole - 2 * side - grid(1), 0};
    const std::string& words = choices[static_cast<std::size_t>(chosen)];
    const float wide = text_extent(TextSize::note, words, true).x;
    if (wide <= middle.width) {
        text_centred(column.list, {middle.left + middle.width / 2, y + side / 2}, TextSize::note, c.ink,
                     words, true);
    } else {
        middle.y = y + (side - paragraph_height(TextSize::note, words, middle.width, true)) / 2;
        paragraph(middle, TextSize::note, c.ink, words, true);
    }
    column.y = y + side;
    return wanted;
}

}  // namespace slopewise
