// The paper material: a sheet that fills the window and scrolls when it must, and columns of type that run
// down it.
#pragma once

#include <array>
#include <cstddef>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include <imgui.h>

#include "ui/theme.h"

namespace slopewise {

// A measure of paper being filled from the top: everything drawn in it moves `y` down.
struct Column {
    ImDrawList* list = nullptr;
    float left = 0, width = 0;  // pixels
    float y = 0;

    float right() const { return left + width; }
};

// `steps` of the 8-unit grid in pixels.
float grid(float steps);

// Pixels between the sheet's edge and its page.
float sheet_margin();

// Pixels from one line of text to the next.
float line_height(TextSize size);

// Width as the number of text-size squares that fit: what decides how many columns a sheet has.
float measure(const Column& column);

// A sheet over the whole window, with its margins; `name` is its identity. Returns the page between the
// margins.
Column begin_sheet(const char* name);

// Ends the sheet; what lies between the page's top and its `y` decides whether it scrolls. Page Up, Page
// Down, Home and End page through it, unless they have another meaning there.
void end_sheet(const Column& page, bool pages_with_keys = true);

// A smaller sheet laid in the middle of the window, for content of the given size; it scrolls when the window
// is smaller.
Column begin_slip(const char* name, ImVec2 content);
void end_slip(const Column& page);

// The widest content that such a slip can hold, up to `wanted` pixels.
float slip_width(float wanted);

// True while the hand drags the sheet, and for the frame in which it lets go: a press that became a scroll
// presses nothing.
bool sheet_is_dragged();

// While true the hand is on something that uses the drag itself.
void hold_sheet(bool held);

// ---- filling a column ----

void gap(Column& column, float steps);
void rule(Column& column);

// Bold text with a rule above: begins a part of a sheet.
void heading(Column& column, std::string_view words);

// Words broken at spaces into the column's width.
void paragraph(Column& column, TextSize size, ImU32 colour, std::string_view words, bool bold = false);

// Takes the words of one line from the front of `rest`: as many as the width holds, one at least.
std::string_view take_line(std::string_view& rest, TextSize size, float width, bool bold = false);

// The lines that `paragraph` would set, and how many pixels they take.
std::vector<std::string_view> broken_lines(TextSize size, std::string_view words, float width,
                                           bool bold = false);
float paragraph_height(TextSize size, std::string_view words, float width, bool bold = false);

// Columns side by side: `shares` of the width, `between` grid steps apart, all starting at the page's `y`.
std::vector<Column> side_by_side(const Column& page, std::span<const float> shares, float between);

// Moves the page below the lowest of its columns.
void join(Column& page, std::span<const Column> columns);

// ---- small things set at a place ----

void text_right(ImDrawList* list, ImVec2 right_top, TextSize size, ImU32 colour, std::string_view words,
                bool bold = false);
void text_centred(ImDrawList* list, ImVec2 centre, TextSize size, ImU32 colour, std::string_view words,
                  bool bold = false);

// The two marks that always stand beside a word: a tick (good) and an open diamond (attention), `size` pixels
// high.
void mark_in(ImDrawList* list, ImVec2 centre, float size, ImU32 colour);
void mark_out(ImDrawList* list, ImVec2 centre, float size, ImU32 colour);

// A filled triangle pointing down: where on a plot something was seen; `tip` is its lowest point.
void mark_seen(ImDrawList* list, ImVec2 tip, float size, ImU32 colour);

}  // namespace slopewise
