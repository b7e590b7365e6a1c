#include "ui/screens/fault_card.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace slopewise {
namespace {

float note_height() { return theme().size[static_cast<std::size_t>(TextSize::note)]; }

// "Seen: low, the nose was raised": the first word in bold, the rest running on from it.
void run_in(Column& column, std::string_view label, std::string_view words) {
    const Palette& c = theme().colour;
    const float indent = text_extent(TextSize::note, label, true).x + grid(0.75f);
    std::string_view rest = words;
    const std::string_view first = take_line(rest, TextSize::note, column.width - indent);
    text_at(column.list, {column.left, column.y}, TextSize::note, c.ink, label, true);
    text_at(column.list, {column.left + indent, column.y}, TextSize::note, c.ink, first);
    column.y += line_height(TextSize::note);
    paragraph(column, TextSize::note, c.ink, rest);
}

}  // namespace

void draw_fault_card(Column& column, const FaultView& fault) {
    const Palette& c = theme().colour;
    if (fault.title.empty()) {
        rule(column);
        gap(column, 0.75f);
        paragraph(column, TextSize::note, c.ink, fault.none, true);
        return;
    }
    const float padding = grid(1.25f), top = std::round(column.y);
    Column inside{column.list, column.left + padding, column.width - 2 * padding, top + grid(1)};
    const float mark = note_height() * 0.6f;
    mark_seen(column.list, {inside.left + mark / 2, inside.y + note_height() * 0.85f}, mark, c.accent);
    Column title{column.list, inside.left + mark + grid(1), inside.width - mark - grid(1), inside.y};
    paragraph(title, TextSize::text, c.ink, "To work on: " + fault.title, true);
    inside.y = title.y + grid(0.25f);
    run_in(inside, "Seen:", fault.symptom);
    run_in(inside, "Why:", fault.cause);
    run_in(inside, "Could lead to:", fault.could_lead_to);
    run_in(inside, "Next time:", fault.correction);
    column.y = std::round(inside.y + grid(0.5f));
    column.list->AddRect({column.left, top}, {column.right(), column.y}, c.accent, grid(0.5f), 0,
                         std::max(1.5f, grid(0.1875f)));
    if (fault.others.empty()) return;
    gap(column, 0.75f);
    paragraph(column, TextSize::note, c.ink_soft, fault.others);
}

}  // namespace slopewise
