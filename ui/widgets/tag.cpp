#include "ui/widgets/tag.h"

namespace slopewise {
namespace {

float note_height() { return theme().size[static_cast<std::size_t>(TextSize::note)]; }

}  // namespace

ImVec2 draw_tag(ImDrawList* list, ImVec2 min, std::string_view words, const TagLook& look) {
    const float pad = grid(1);
    const float mark_room = look.mark ? note_height() + grid(0.5f) : 0.0f;
    const ImVec2 extent = text_extent(TextSize::note, words, look.bold);
    const ImVec2 max{min.x + extent.x + 2 * pad + mark_room, min.y + extent.y + pad};
    list->AddRectFilled(min, max, look.ground, grid(0.25f));
    const float middle = (min.y + max.y) / 2;
    if (look.mark)
        mark_out(list, {min.x + pad + note_height() * 0.4f, middle}, note_height() * 0.6f, look.ink);
    text_at(list, {min.x + pad + mark_room, middle - extent.y / 2}, TextSize::note, look.ink, words,
            look.bold);
    return {max.x - min.x, max.y - min.y};
}

float marked_tag_width(std::string_view words) {
    return text_extent(TextSize::note, words, true).x + note_height() + grid(2.5f);
}

}  // namespace slopewise
