// What the hand can press on paper and on the shelf: buttons, a row of exclusive choices, a slider.
#pragma once

#include <optional>
#include <span>
#include <string_view>

#include "ui/widgets/paper.h"

namespace slopewise {

enum class Weight {
    primary,  // the accent: the one thing to do next; Enter presses it when nothing else has the focus
    plain,    // an outline
    quiet,    // words alone
    shelf,    // an outline on the dark shelf
};

struct ButtonWords {
    const char* label = "";
    Weight weight = Weight::plain;
    const char* key = "";  // the key that does the same, in small print; may be empty
};

// Height of everything that is pressed: never less than a finger.
float press_height();
float button_width(const ButtonWords& words);

// One button at a place; true in the frame in which it is let go.
bool button(ImDrawList* list, ImVec2 min, ImVec2 size, const ButtonWords& words);

// Buttons in a row, broken into rows where the column is too narrow. Returns the one pressed, or -1.
int button_row(Column& column, std::span<const ButtonWords> buttons);
float button_row_height(float width, std::span<const ButtonWords> buttons);

// A sheet's title with its way back beside it, at the head, where it is seen however long the sheet is; true
// when the way back is taken.
bool title_with_way_back(Column& page, std::string_view title, const ButtonWords& back);

// Exclusive choices joined in a row; returns the one pressed, or -1.
int choice_row(Column& column, const char* name, std::span<const std::string> labels, int chosen);

// A slider from 0 to `most` in whole `step`s, with `words` and `unit` beside it. Arrow keys move it while it
// has the focus. Returns a new value when the hand has set one.
struct SliderWords {
    const char* name = "";
    std::string_view value, unit;
    std::string_view widest;  // the widest value, so that nothing moves when it changes
};
std::optional<double> slider(Column& column, const SliderWords& words, double value, double most,
                             double step);

// An area that is pressed as a whole, drawn by the caller. `hovered` and `focused` say how it should look.
struct Press {
    bool pressed = false, hovered = false, held = false, focused = false;
};
Press press_area(const char* name, ImVec2 min, ImVec2 size);

// Keys that are down now move no focus until they are pressed anew; whoever asks still sees them held.
void keep_held_keys_from_focus();

// No ring is shown, and Enter is the primary button's, until a key moves the focus.
void hide_focus();

// For this frame and the next the arrows move no focus: the sheet reads them itself.
void keep_arrows_from_focus();

// Whether Tab, arrows, Enter and the space bar go through a sheet. Not while it waits for any key at all;
// what is focused stays so. The next screen has it on again.
void let_keys_move_focus(bool on);

// The ring round what the keyboard would press.
void focus_ring(ImDrawList* list, ImVec2 min, ImVec2 max, ImU32 colour);

}  // namespace slopewise
