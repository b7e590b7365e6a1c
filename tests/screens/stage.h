// A screen on a stage: drawn with no window behind it, pressed with a made-up mouse and keyboard.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <imgui.h>

#include "tests/wish_in.h"
#include "ui/screens/screens.h"

struct ImGuiWindow;

namespace slopewise {

struct Box {
    float left = 0, top = 0, right = 0, bottom = 0;

    ImVec2 middle() const { return {(left + right) / 2, (top + bottom) / 2}; }
    float height() const { return bottom - top; }
    bool lies_in(const Box& other, float by = 0.5f) const {
        return left >= other.left - by && top >= other.top - by && right <= other.right + by &&
               bottom <= other.bottom + by;
    }
};

class Stage {
public:
    explicit Stage(ImVec2 size);
    ~Stage();
    Stage(const Stage&) = delete;
    Stage& operator=(const Stage&) = delete;

    void resize(ImVec2 size);
    Box display() const;

    // One frame of a screen; what it asked for. A changed screen needs two to settle.
    Actions draw(Screen screen);

    // What it asked for while a key went down and up, or the mouse did at a place.
    Actions key(Screen screen, ImGuiKey key);
    Actions click(Screen screen, ImVec2 place);

    // Where what is called `label` in a window can be pressed: found as a hand would, by moving over the
    // window; first to where it is said to be drawn.
    std::optional<Box> place_of(Screen screen, const char* window, const char* label,
                                const char* group = nullptr);

    void move_mouse(ImVec2 place);
    void hold_mouse(bool down);
    void turn_wheel(float notches);
    void hold_key(ImGuiKey key, bool down);

    // Of the frame drawn last.
    std::vector<Box> glyphs(std::string_view window) const;  // every character's box, before clipping
    Box drawn() const;  // what all vertices span, clipped as they will be
    int vertices() const;
    float scroll_room(const char* window) const;
    float scrolled(const char* window) const;

    View view;
    UiState ui;

private:
    ImVec2 told_place(Screen screen, ImGuiWindow& window, ImGuiID wanted);

    ImGuiContext* context_ = nullptr;
};

// Every screen and the name of its window.
struct Place {
    Screen screen;
    const char* window;
};
inline constexpr std::array<Place, 30> screens{{{Screen::choices, "choices"},
                                                {Screen::stick_sense, "stick sense"},
                                                {Screen::briefing, "briefing"},
                                                {Screen::flight, "flight"},
                                                {Screen::summary, "summary"},
                                                {Screen::screen_and_help, "screen and help"},
                                                {Screen::where_and_when, "where and when"},
                                                {Screen::estimate, "estimate"},
                                                {Screen::take_away, "take away"},
                                                {Screen::criteria, "criteria"},
                                                {Screen::school, "school"},
                                                {Screen::replay, "replay"},
                                                {Screen::logbook, "logbook"},
                                                {Screen::progress, "progress"},
                                                {Screen::sources, "sources"},
                                                {Screen::own_lessons, "own lessons"},
                                                {Screen::lesson_editor, "lesson editor"},
                                                {Screen::arrived_lesson, "arrived lesson"},
                                                {Screen::drills, "drills"},
                                                {Screen::drill, "drill"},
                                                {Screen::drill_result, "drill result"},
                                                {Screen::welcome, "welcome"},
                                                {Screen::lessons, "lessons"},
                                                {Screen::lesson_card, "lesson card"},
                                                {Screen::class_room, "class room"},
                                                {Screen::class_window, "class window"},
                                                {Screen::class_table, "class table"},
                                                {Screen::keys, "keys"},
                                                {Screen::controllers, "controllers"},
                                                {Screen::about, "about"}}};

// How many characters lie over others.
int words_over_words(const std::vector<Box>& glyphs);

// "1280 x 720".
inline std::string size_words(ImVec2 size) {
    return std::to_string(static_cast<int>(size.x)) + " x " + std::to_string(static_cast<int>(size.y));
}

// What is asked for by a click on what is called `label`; fails the test when there is no such thing.
Actions press(Stage& stage, Screen screen, const char* window, const char* label,
              const char* group = nullptr);

// The first action of a kind among them; null when there is none.
template <class Wanted>
const Wanted* find(const Actions& actions) {
    for (const Action& action : actions) {
        if (const auto* wanted = wish_in<Wanted>(action)) return wanted;
    }
    return nullptr;
}

}  // namespace slopewise
