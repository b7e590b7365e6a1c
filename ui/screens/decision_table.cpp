#include "ui/screens/decision_table.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace slopewise {
namespace {

struct Cell {
    const char* words;
    bool stable, continued;
};
constexpr std::array<Cell, 4> cells{
    {{"right", true, true}, {"cautious", true, false}, {"miss", false, true}, {"right", false, false}}};

float note_height() { return theme().size[static_cast<std::size_t>(TextSize::note)]; }
float row_height() { return std::round(note_height() * 1.45f); }
bool miss(const Cell& cell) { return !cell.stable && cell.continued; }

// This run's: framed, in bold, with a mark beside its word.
void draw_marked(ImDrawList* list, ImVec2 min, ImVec2 max, const Cell& cell) {
    const Palette& c = theme().colour;
    const ImU32 ink = miss(cell) ? c.attention : c.good;
    const float mark = note_height() * 0.6f;
    const ImVec2 middle{(min.x + max.x) / 2, (min.y + max.y) / 2};
    const float words = text_extent(TextSize::note, cell.words, true).x;
    list->AddRect(min, max, ink, grid(0.375f), 0, std::max(1.5f, grid(0.25f)));
    text_centred(list, {middle.x + mark * 0.7f, middle.y}, TextSize::note, ink, cell.words, true);
    const ImVec2 at{middle.x - words / 2 - mark * 0.35f, middle.y};
    if (miss(cell)) mark_out(list, at, mark, ink);
    else mark_in(list, at, mark, ink);
}

}  // namespace

void draw_decision(Column& column, const DecisionView& decision) {
    const Palette& c = theme().colour;
    heading(column, "Decision at " + decision.gate);
    if (!decision.known) return paragraph(column, TextSize::note, c.ink_soft, decision.words);
    const float names = text_extent(TextSize::note, "not stable", true).x + grid(1.5f);
    const float widest = text_extent(TextSize::note, "gone around").x + grid(2);
    const float each = std::min(std::floor((column.width - names) / 2), std::max(widest, grid(20)));
    const auto left_of = [&](bool continued) { return column.left + names + (continued ? 0.0f : each); };
    for (const bool continued : {true, false})
        text_centred(column.list, {left_of(continued) + each / 2, column.y + note_height() / 2},
                     TextSize::note, c.ink_soft, continued ? "continued" : "gone around");
    column.y += line_height(TextSize::note);
    for (const bool stable : {true, false}) {
        const float y = std::round(column.y);
        text_at(column.list, {column.left, y + (row_height() - note_height()) / 2}, TextSize::note, c.ink,
                stable ? "stable" : "not stable", true);
        for (const Cell& cell : cells) {
            if (cell.stable != stable) continue;
            const float left = left_of(cell.continued);
            const ImVec2 min{left + 1, y + 1}, max{left + each - 1, y + row_height() - 1};
            const bool this_run = decision.stable == stable && decision.continued == cell.continued;
            if (this_run) draw_marked(column.list, min, max, cell);
            else
                text_centred(column.list, {(min.x + max.x) / 2, (min.y + max.y) / 2}, TextSize::note,
                             c.ink_soft, cell.words);
        }
        column.y = y + row_height();
    }
}

float decision_height(const DecisionView& decision) {
    return grid(1.25f) + 2 * line_height(TextSize::note) + (decision.known ? 2 * row_height() : 0);
}

}  // namespace slopewise
