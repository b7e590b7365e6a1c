// A slip just large enough for one line of words, floating over the view.
#pragma once

#include <string_view>

#include "ui/widgets/paper.h"

namespace slopewise {

struct TagLook {
    ImU32 ground = 0, ink = 0;
    bool bold = false;
    bool mark = false;  // the mark of attention before the words
};

// Returns the size it took.
ImVec2 draw_tag(ImDrawList* list, ImVec2 min, std::string_view words, const TagLook& look);

// The width of a bold one with its mark.
float marked_tag_width(std::string_view words);

}  // namespace slopewise
