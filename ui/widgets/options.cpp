#include "ui/widgets/options.h"

#include <algorithm>
#include <cmath>

namespace slopewise {
namespace {

float note_height() { return theme().size[static_cast<std::size_t>(TextSize::note)]; }

// A ring, filled when chosen.
void draw_mark(ImDrawList* list, ImVec2 centre, float radius, bool chosen) {
    const Palette& c = theme().colour;
    list->AddCircle(centre, radius, c.accent, 24, std::max(1.0f, std::round(grid(0.1875f))));
    if (chosen) list->AddCircleFilled(centre, radius * 0.55f, c.accent, 24);
}

}  // namespace

bool option_row(Column& column, const char* name, std::string_view about, bool chosen) {
    const Palette& c = theme().colour;
    const float indent = std::round(note_height() * 1.6f), padding = grid(0.5f);
    const float about_height = paragraph_height(TextSize::note, about, column.width - indent);
    const float name_height = paragraph_height(TextSize::note, name, column.width - indent, true);
    const float words_height = name_height + about_height;
    const float height = std::max(44.0f, std::round(words_height + 2 * padding));
    const ImVec2 min{std::round(column.left), std::round(column.y)};
    const ImVec2 max{min.x + column.width, min.y + height};
    const Press press = press_area(name, min, {column.width, height});
    if (press.hovered) column.list->AddRectFilled(min, max, c.band, grid(0.5f));

    Column words{column.list, min.x + indent, column.width - indent,
                 min.y + std::round((height - words_height) / 2)};
    draw_mark(column.list, {min.x + indent * 0.45f, words.y + note_height() * 0.55f}, note_height() * 0.42f,
              chosen);
    paragraph(words, TextSize::note, chosen ? c.accent : c.ink, name, true);
    paragraph(words, TextSize::note, c.ink_soft, about);
    if (press.focused) focus_ring(column.list, min, max, c.ink);
    column.y = max.y;
    return press.pressed;
}

}  // namespace slopewise
