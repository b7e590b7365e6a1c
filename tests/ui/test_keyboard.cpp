// The keyboard: what a key is on keyboards of several countries, and keys that come up unheard.
#include <doctest/doctest.h>

#include <array>
#include <string_view>
#include <utility>

#include "ui/input.h"
#include "ui/key_bindings.h"
#include "ui/key_names.h"
#include "ui/keyboard.h"

using namespace slopewise;

namespace {

// A key as a browser tells of it: KeyboardEvent.code and .key.
struct Told {
    std::string_view code, gives;
};

Key key_told(const Told& told) { return key_of(place_of(told.code), told.gives); }

std::size_t index(Key key) { return static_cast<std::size_t>(key); }

RawInput read_at(Keyboard& keyboard, double wall_s) {
    RawInput raw;
    read(keyboard, wall_s, raw);
    return raw;
}

}  // namespace

// What stands where: the layouts of France (AZERTY) and Germany (QWERTZ) as printed on their keys, from
// memory; codes by the W3C's UI Events KeyboardEvent code Values.
TEST_CASE("keyboard: a letter is what the key gives, wherever a French or a German keyboard has it") {
    for (const auto& [told, key] : {std::pair{Told{"KeyQ", "a"}, Key::a},
                                    {Told{"KeyA", "q"}, Key::q},
                                    {Told{"KeyW", "z"}, Key::z},
                                    {Told{"Semicolon", "m"}, Key::m},
                                    {Told{"KeyM", ","}, Key::comma},
                                    {Told{"Comma", ";"}, Key::semicolon},
                                    {Told{"KeyZ", "y"}, Key::y},
                                    {Told{"KeyY", "z"}, Key::z},
                                    {Told{"Slash", "-"}, Key::minus},
                                    {Told{"KeyE", "E"}, Key::e}}) {
        CAPTURE(std::string(told.code));
        CHECK(key_told(told) == key);
    }
}

TEST_CASE(
    "keyboard: the digits of a French keyboard need no second key, although it gives them only with Shift") {
    CHECK(key_told({"Digit1", "&"}) == Key::one);
    CHECK(key_told({"Digit4", "'"}) == Key::four);
    CHECK(key_told({"Digit6", "-"}) == Key::six);
    CHECK(key_told({"Digit0", "\u00e0"}) == Key::zero);
}

// Russian (ЙЦУКЕН) and Greek letters stand on the keys whose places give E, D, G and ; on a keyboard of the
// United States; from memory.
TEST_CASE("keyboard: where the letters are of another alphabet, a key is known by its place") {
    CHECK(key_told({"KeyE", "\u0443"}) == Key::e);
    CHECK(key_told({"KeyD", "\u0432"}) == Key::d);
    CHECK(key_told({"KeyG", "\u043f"}) == Key::g);
    CHECK(key_told({"Semicolon", "\u0436"}) == Key::semicolon);
    CHECK(key_told({"KeyG", "\u03b3"}) == Key::g);
    CHECK(key_told({"KeyE", "Process"}) == Key::e);  // while a Japanese word is being put together
    CHECK(key_told({"BracketLeft", "Dead"}) == Key::left_bracket);
}

TEST_CASE("keyboard: an umlaut is known by its place and called by what it gives") {
    CHECK(key_told({"Semicolon", "\u00f6"}) == Key::semicolon);
    CHECK(character_of("\u00f6") == 0xf6);
    CHECK(key_cap({Key::semicolon, character_of("\u00f6")}) == "\u00d6");
    CHECK(key_cap({Key::minus, character_of("\u00df")}) == "\u00df");  // it has no capital
    CHECK(character_of("\u0443") == 0);  // the program's letters cannot draw it: called by its place
    CHECK(character_of("e") == 0);
    CHECK(character_of("Dead") == 0);
}

TEST_CASE("keyboard: the keypad is itself with its digits on, and arrows with them off") {
    CHECK(key_told({"Numpad8", "8"}) == Key::pad_8);
    CHECK(key_told({"Numpad8", "ArrowUp"}) == Key::up);
    CHECK(key_told({"Numpad5", "Clear"}) == Key::pad_5);
    CHECK(key_told({"NumpadComma", ","}) == Key::pad_decimal);
    CHECK(key_told({"NumpadEnter", "Enter"}) == Key::enter);
}

TEST_CASE("keyboard: a clicker that tells no place is known by what it gives") {
    for (const auto& [gives, key] : {std::pair{std::string_view("PageDown"), Key::page_down},
                                     {"PageUp", Key::page_up},
                                     {"b", Key::b},
                                     {".", Key::period},
                                     {"F5", Key::f5},
                                     {"Escape", Key::escape},
                                     {"3", Key::three},
                                     {"AudioVolumeUp", Key::other},
                                     {"", Key::other}})
        CHECK(key_told({"", gives}) == key);
}

TEST_CASE("keyboard: every key has its own name in the settings, its own cap and its own place") {
    for (std::size_t i = 0; i < index(Key::other); ++i) {
        const KeyName& one = name_of(static_cast<Key>(i));
        CAPTURE(std::string(one.id));
        CHECK(key_of_id(one.id) == one.key);
        CHECK(place_of(one.code) == one.key);
        CHECK_FALSE(one.words.empty());
        CHECK(one.cap.size() <= 8);                          // fits where a string takes no memory
        CHECK(one.cap.find(' ') == std::string_view::npos);  // a blank parts two caps
        for (std::size_t j = 0; j < i; ++j) CHECK(name_of(static_cast<Key>(j)).cap != one.cap);
    }
}

TEST_CASE("keyboard: a tap between two frames is pressed once and held for one frame") {
    Keyboard keyboard;
    read_at(keyboard, 1.0);
    key_down(keyboard, Key::e, Key::e, 0, false);
    key_up(keyboard, Key::e, Key::e);
    const RawInput tapped = read_at(keyboard, 1.02);
    CHECK(tapped.was_pressed(Key::e));
    CHECK(tapped.is_held(Key::e));
    const RawInput after = read_at(keyboard, 1.04);
    CHECK_FALSE(after.was_pressed(Key::e));
    CHECK_FALSE(after.is_held(Key::e));
}

TEST_CASE("keyboard: what the machine repeats is no new press, and only the keys that step repeat here") {
    Keyboard keyboard;
    read_at(keyboard, 1.0);
    for (const Key key : {Key::f, Key::right}) key_down(keyboard, key, key, 0, false);
    int flaps = 0, steps = 0;
    for (int frame = 1; frame <= 60; ++frame) {
        for (const Key key : {Key::f, Key::right}) key_down(keyboard, key, key, 0, true);
        const RawInput raw = read_at(keyboard, 1.0 + frame / 60.0);
        flaps += raw.was_pressed(Key::f) ? 1 : 0;
        steps += raw.was_pressed(Key::right) ? 1 : 0;
    }
    CHECK(flaps == 1);
    // After 0.275 s every 0.05 s, on the next frame of 1/60 s: a step each 3 or 4 frames for 0.725 s.
    CHECK(steps >= 1 + 10);
    CHECK(steps <= 1 + 15);
}

TEST_CASE("keyboard: a key that comes up elsewhere is let go when the window loses its focus") {
    Keyboard keyboard;
    read_at(keyboard, 1.0);
    key_down(keyboard, Key::down, Key::down, 0, false);
    CHECK(read_at(keyboard, 1.02).is_held(Key::down));
    let_go(keyboard);
    CHECK_FALSE(read_at(keyboard, 1.04).is_held(Key::down));
    key_down(keyboard, Key::down, Key::down, 0, true);  // still under the finger: its repeats are no press
    CHECK_FALSE(read_at(keyboard, 1.06).is_held(Key::down));
}

TEST_CASE("keyboard: after two seconds without a frame nothing counts as held") {
    Keyboard keyboard;
    read_at(keyboard, 1.0);
    key_down(keyboard, Key::down, Key::down, 0, false);
    CHECK(read_at(keyboard, 2.9).is_held(Key::down));  // a slow machine
    read_at(keyboard, 2.95);
    CHECK_FALSE(read_at(keyboard, 5.0).is_held(Key::down));  // a question of the browser stood over the page
}

TEST_CASE("keyboard: a key that gave another letter with Shift comes up as what it went down as") {
    Keyboard keyboard;
    read_at(keyboard, 1.0);
    key_down(keyboard, Key::m, Key::comma, 0, false);  // a French keyboard
    CHECK(read_at(keyboard, 1.02).is_held(Key::comma));
    key_up(keyboard, Key::m, Key::m);  // "?" by then, which is no key of ours
    CHECK_FALSE(read_at(keyboard, 1.04).is_held(Key::comma));
}
