// The look: two materials (the window and paper), one type family in four sizes, an 8-unit grid.
// Every colour and size on a screen comes from here, so a look is changed in one place.
#pragma once

#include <span>
#include <string_view>

#include <imgui.h>

namespace slopewise {

struct Palette {
    ImU32 paper, paper_edge, ink, ink_soft, rule;  // sheets
    ImU32 accent, accent_ink;                      // one accent, and text upon it
    ImU32 good, attention;                         // blue and orange, always beside a word or a mark
    ImU32 band;                                    // tolerance fill in plots
    ImU32 lamp_red, lamp_white;                    // the lights alone
    ImU32 shelf, shelf_edge, dial, dial_ink, dial_soft, needle;  // the instrument shelf
};

enum class TextSize { title, text, number, note };

struct Theme {
    Palette colour{};
    float unit = 8;      // one grid step in pixels; all spacing is a multiple
    float size[4] = {};  // pixel height of each TextSize
    ImFont* regular = nullptr;
    ImFont* bold = nullptr;
};

// Loads the two fonts (TrueType or OpenType bytes, kept by the caller) into ImGui's atlas, once.
// `pixel_ratio` is device pixels per layout pixel, so that text is sharp on dense screens.
void load_fonts(std::string_view regular, std::string_view bold, float pixel_ratio);

// Sizes that follow the window; called once a frame before drawing. Smallest text is at least 3 % of
// the window's height in a landscape window of projector size, and never under 11 pixels.
void fit_theme(float window_width, float window_height);

const Theme& theme();

// Text in one of the four sizes, drawn with a draw list at a position; returns the size it took.
ImVec2 text_at(ImDrawList* list, ImVec2 position, TextSize size, ImU32 colour, std::string_view words,
               bool bold = false);
ImVec2 text_extent(TextSize size, std::string_view words, bool bold = false);

}  // namespace slopewise
