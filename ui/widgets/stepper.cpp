#include "ui/widgets/stepper.h"

#include <algorithm>
#include <cmath>

namespace slopewise {
namespace {

float note_height() { return theme().size[static_cast<std::size_t>(TextSize::note)]; }

// A square with a minus or a plus; at an end of the range it is pale and does nothing.
bool step_press(Column& column, const char* name, ImVec2 min, float side, bool plus, bool able) {
    const Palette& c = theme().colour;
    const ImVec2 max{min.x + side, min.y + side};
    const Press press = press_area(name, min, {side, side});
    const ImU32 ink = able ? c.accent : c.rule;
    const float line = std::max(1.0f, std::round(grid(0.1875f))), arm = side * 0.17f;
    const ImVec2 middle{min.x + side / 2, min.y + side / 2};
    const float inset = std::round(side * 0.1f);
    if (able && press.hovered)
        column.list->AddRectFilled({min.x + inset, min.y + inset}, {max.x - inset, max.y - inset}, c.band,
                                   grid(0.5f));
    column.list->AddRect({min.x + inset, min.y + inset}, {max.x - inset, max.y - inset}, ink, grid(0.5f), 0,
                         line);
    column.list->AddLine({middle.x - arm, middle.y}, {middle.x + arm, middle.y}, ink, 1.5f * line);
    if (plus) column.list->AddLine({middle.x, middle.y - arm}, {middle.x, middle.y + arm}, ink, 1.5f * line);
    if (press.focused) focus_ring(column.list, min, max, c.ink);
    return press.pressed && able;
}

double stepped(double value, double step, double least, double most) {
    return std::clamp(std::round(value / step) * step, least, most);
}

}  // namespace

std::optional<double> stepper(Column& column, const StepperWords& words, double value, double least,
                              double most, double step) {
    const Palette& c = theme().colour;
    const float side = std::max(44.0f, std::round(note_height() * 1.7f));
    const float unit = text_extent(TextSize::note, words.unit).x;
    const float middle =
        text_extent(TextSize::note, "0000 ", true).x + text_extent(TextSize::note, "ft/min").x;
    const float whole = 2 * side + middle + grid(1);
    if (text_extent(TextSize::note, words.name).x + grid(1) + whole > column.width) {
        paragraph(column, TextSize::note, c.ink, words.name);
    } else {
        text_at(column.list, {column.left, column.y + (side - note_height()) / 2}, TextSize::note, c.ink,
                words.name);
    }
    const float left = std::round(column.right() - whole), y = std::round(column.y);
    std::optional<double> wanted;
    constexpr double nothing = 1e-9;
    ImGui::PushID(words.id);
    if (step_press(column, "less", {left, y}, side, false, value > least + nothing))
        wanted = stepped(value - step, step, least, most);
    if (step_press(column, "more", {column.right() - side, y}, side, true, value < most - nothing))
        wanted = stepped(value + step, step, least, most);
    ImGui::PopID();

    const float words_width =
        text_extent(TextSize::note, words.value, true).x + (words.unit.empty() ? 0.0f : grid(0.5f) + unit);
    const float x = left + side + (whole - 2 * side - words_width) / 2,
                text_y = y + (side - note_height()) / 2;
    text_at(column.list, {std::round(x), text_y}, TextSize::note, c.ink, words.value, true);
    text_right(column.list, {std::round(x + words_width), text_y}, TextSize::note, c.ink_soft, words.unit);
    column.y = y + side;
    return wanted;
}

}  // namespace slopewise
