// The look: two materials (the window and paper), one type family in four sizes, an 8-unit grid.
// Every colour and size on a screen comes from here and from palette.h, so a look is changed in one place.
#pragma once

#include <span>
#include <string_view>

#include <imgui.h>

#include "ui/palette.h"

namespace slopewise {

// Four sizes for all that is read, and one for the airspeed that the back row reads: digits alone.
enum class TextSize { title, text, number, note, back_row };

struct Theme {
    Palette colour{};
    float unit = 8;      // one grid step in pixels; all spacing is a multiple
    float size[5] = {};  // pixel height of each TextSize
    ImFont* regular = nullptr;
    ImFont* bold = nullptr;
};

// Loads the two fonts (TrueType or OpenType bytes, kept by the caller) into ImGui's atlas; again when the
// ratio has changed.
// `pixel_ratio` is device pixels per layout pixel, so that text is sharp on dense screens.
void load_fonts(std::string_view regular, std::string_view bold, float pixel_ratio);

// Sizes that follow the window; called once a frame before drawing. The smallest text is at least 3 % of
// the height of a landscape window, and never under 14 pixels.
void fit_theme(float window_width, float window_height);

// The colours, and whether text is made for a projector: then the smallest is 3.6 % of the height of a
// landscape window, and 3 % of that of an upright one whose width has room for it. Holds until changed.
void wear_look(Look look, bool projector_text);

const Theme& theme();

// Text in one of the four sizes, drawn with a draw list at a position; returns the size it took.
ImVec2 text_at(ImDrawList* list, ImVec2 position, TextSize size, ImU32 colour, std::string_view words,
               bool bold = false);
ImVec2 text_extent(TextSize size, std::string_view words, bool bold = false);

}  // namespace slopewise
