#include "ui/widgets/notes.h"

#include <algorithm>
#include <cmath>

namespace slopewise {

void attention_note(Column& column, std::string_view words) {
    const Palette& c = theme().colour;
    const float mark = grid(1.5f);
    mark_out(column.list, {column.left + mark / 2, column.y + line_height(TextSize::note) * 0.42f}, mark,
             c.attention);
    Column beside{column.list, column.left + grid(3), column.width - grid(3), column.y};
    paragraph(beside, TextSize::note, c.attention, words);
    column.y = beside.y;
}

void fact_row(Column& column, std::string_view name, std::string_view words) {
    const Palette& c = theme().colour;
    const float indent =
        std::round(std::max(column.width * 0.28f, text_extent(TextSize::note, "Target speed  ").x));
    text_at(column.list, {column.left, column.y}, TextSize::note, c.ink_soft, name);
    Column beside{column.list, column.left + indent, column.width - indent, column.y};
    paragraph(beside, TextSize::note, c.ink, words);
    column.y = beside.y;
    gap(column, 0.5f);
}

}  // namespace slopewise
