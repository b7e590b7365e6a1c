#include "ui/key_names.h"

#include <algorithm>
#include <array>

namespace slopewise {
namespace {

constexpr std::size_t key_count = static_cast<std::size_t>(Key::count);

// In the order of the enumeration. Codes are those of the W3C's "UI Events KeyboardEvent code Values". F1,
// F3, F5 to F7 and F10 to F12 are taken by browsers (help, find, load again, caret, menu, full screen, tools;
// common practice, no source).
constexpr std::array<KeyName, key_count> names{{
    {Key::up, "up", "ArrowUp", "\u2191", "Up arrow", true},
    {Key::down, "down", "ArrowDown", "\u2193", "Down arrow", true},
    {Key::e, "e", "KeyE", "E", "E", true},
    {Key::d, "d", "KeyD", "D", "D", true},
    {Key::r, "r", "KeyR", "R", "R", true},
    {Key::f, "f", "KeyF", "F", "F", true},
    {Key::u, "u", "KeyU", "U", "U", true},
    {Key::j, "j", "KeyJ", "J", "J", true},
    {Key::g, "g", "KeyG", "G", "G", true},
    {Key::x, "x", "KeyX", "X", "X", true},
    {Key::p, "p", "KeyP", "P", "P", true},
    {Key::s, "s", "KeyS", "S", "S", true},
    {Key::n, "n", "KeyN", "N", "N", true},
    {Key::m, "m", "KeyM", "M", "M", true},
    {Key::c, "c", "KeyC", "C", "C", true},
    {Key::o, "o", "KeyO", "O", "O", true},
    {Key::one, "one", "Digit1", "1", "1", true},
    {Key::two, "two", "Digit2", "2", "2", true},
    {Key::three, "three", "Digit3", "3", "3", true},
    {Key::four, "four", "Digit4", "4", "4", true},
    {Key::five, "five", "Digit5", "5", "5", true},
    {Key::six, "six", "Digit6", "6", "6", true},
    {Key::seven, "seven", "Digit7", "7", "7", true},
    {Key::eight, "eight", "Digit8", "8", "8", true},
    {Key::space, "space", "Space", "Space", "Space bar", true},
    {Key::escape, "escape", "Escape", "Esc", "Escape", false},
    {Key::h, "h", "KeyH", "H", "H", true},
    {Key::v, "v", "KeyV", "V", "V", true},
    {Key::w, "w", "KeyW", "W", "W", true},
    {Key::t, "t", "KeyT", "T", "T", true},
    {Key::left, "left", "ArrowLeft", "\u2190", "Left arrow", true},
    {Key::right, "right", "ArrowRight", "\u2192", "Right arrow", true},
    {Key::comma, "comma", "Comma", ",", "Comma", true},
    {Key::period, "period", "Period", ".", "Full stop", true},
    {Key::page_up, "page_up", "PageUp", "PgUp", "Page up", true},
    {Key::page_down, "page_down", "PageDown", "PgDn", "Page down", true},
    {Key::home, "home", "Home", "Home", "Home", true},
    {Key::end, "end", "End", "End", "End", true},
    {Key::backspace, "backspace", "Backspace", "Bksp", "Backspace", true},
    {Key::l, "l", "KeyL", "L", "L", true},
    {Key::i, "i", "KeyI", "I", "I", true},
    {Key::a, "a", "KeyA", "A", "A", true},
    {Key::q, "q", "KeyQ", "Q", "Q", true},
    {Key::k, "k", "KeyK", "K", "K", true},
    {Key::b, "b", "KeyB", "B", "B", true},
    {Key::y, "y", "KeyY", "Y", "Y", true},
    {Key::z, "z", "KeyZ", "Z", "Z", true},
    {Key::nine, "nine", "Digit9", "9", "9", true},
    {Key::zero, "zero", "Digit0", "0", "0", true},
    {Key::semicolon, "semicolon", "Semicolon", ";", "Semicolon", true},
    {Key::apostrophe, "apostrophe", "Quote", "'", "Apostrophe", true},
    {Key::slash, "slash", "Slash", "/", "Slash", true},
    {Key::minus, "minus", "Minus", "-", "Minus", true},
    {Key::equals, "equals", "Equal", "=", "Equals sign", true},
    {Key::left_bracket, "left_bracket", "BracketLeft", "[", "Left bracket", true},
    {Key::right_bracket, "right_bracket", "BracketRight", "]", "Right bracket", true},
    {Key::backslash, "backslash", "Backslash", "\\", "Backslash", true},
    {Key::grave, "grave", "Backquote", "`", "Grave accent", true},
    {Key::beside_left_shift, "beside_left_shift", "IntlBackslash", "<", "Key beside left shift", true},
    {Key::beside_right_shift, "beside_right_shift", "IntlRo", "Ro", "Key beside right shift", true},
    {Key::before_backspace, "before_backspace", "IntlYen", "Yen", "Key before backspace", true},
    {Key::insert, "insert", "Insert", "Ins", "Insert", true},
    {Key::delete_forward, "delete_forward", "Delete", "Del", "Delete", true},
    {Key::f2, "f2", "F2", "F2", "F2", true},
    {Key::f4, "f4", "F4", "F4", "F4", true},
    {Key::f8, "f8", "F8", "F8", "F8", true},
    {Key::f9, "f9", "F9", "F9", "F9", true},
    {Key::pad_0, "pad_0", "Numpad0", "Num0", "Keypad 0", true},
    {Key::pad_1, "pad_1", "Numpad1", "Num1", "Keypad 1", true},
    {Key::pad_2, "pad_2", "Numpad2", "Num2", "Keypad 2", true},
    {Key::pad_3, "pad_3", "Numpad3", "Num3", "Keypad 3", true},
    {Key::pad_4, "pad_4", "Numpad4", "Num4", "Keypad 4", true},
    {Key::pad_5, "pad_5", "Numpad5", "Num5", "Keypad 5", true},
    {Key::pad_6, "pad_6", "Numpad6", "Num6", "Keypad 6", true},
    {Key::pad_7, "pad_7", "Numpad7", "Num7", "Keypad 7", true},
    {Key::pad_8, "pad_8", "Numpad8", "Num8", "Keypad 8", true},
    {Key::pad_9, "pad_9", "Numpad9", "Num9", "Keypad 9", true},
    {Key::pad_decimal, "pad_decimal", "NumpadDecimal", "Num.", "Keypad decimal", true},
    {Key::pad_divide, "pad_divide", "NumpadDivide", "Num/", "Keypad divide", true},
    {Key::pad_multiply, "pad_multiply", "NumpadMultiply", "Num*", "Keypad times", true},
    {Key::pad_subtract, "pad_subtract", "NumpadSubtract", "Num-", "Keypad minus", true},
    {Key::pad_add, "pad_add", "NumpadAdd", "Num+", "Keypad plus", true},
    {Key::pad_equal, "pad_equal", "NumpadEqual", "Num=", "Keypad equals", true},
    {Key::tab, "tab", "Tab", "Tab", "Tab", false},
    {Key::enter, "enter", "Enter", "Enter", "Enter", false},
    {Key::f5, "f5", "F5", "F5", "F5", false},
    {Key::other, "other", "", "", "", false},
}};

constexpr bool in_order() {
    for (std::size_t i = 0; i < key_count; ++i)
        if (names[i].key != static_cast<Key>(i)) return false;
    return true;
}
static_assert(in_order());

bool in_digit_row(Key place) { return name_of(place).code.starts_with("Digit"); }
bool on_keypad(Key place) { return name_of(place).code.starts_with("Numpad"); }

// The letter or sign of one byte as a key.
Key key_of_character(char character) {
    const char capital =
        character >= 'a' && character <= 'z' ? static_cast<char>(character - 'a' + 'A') : character;
    if (capital == ' ') return Key::space;
    for (const KeyName& name : names)
        if (name.cap.size() == 1 && name.cap[0] == capital && name.key != Key::beside_left_shift)
            return name.key;
    return Key::other;
}

}  // namespace

const KeyName& name_of(Key key) { return names[std::min(static_cast<std::size_t>(key), key_count - 1)]; }

Key key_of_id(std::string_view id) {
    for (const KeyName& name : names)
        if (name.id == id) return name.key;
    return Key::count;
}

Key place_of(std::string_view code) {
    if (code == "NumpadEnter") return Key::enter;
    if (code == "NumpadComma") return Key::pad_decimal;
    for (const KeyName& name : names)
        if (name.code == code && !code.empty()) return name.key;
    return Key::other;
}

Key key_of(Key place, std::string_view gives) {
    if (in_digit_row(place)) return place;
    if (on_keypad(place)) {  // with its digits off it gives arrows, Home, Page up
        const Key named = gives.size() > 1 ? place_of(gives) : Key::other;
        return named == Key::other ? place : named;
    }
    const Key given = gives.size() == 1 ? key_of_character(gives[0]) : Key::other;
    if (given != Key::other && !in_digit_row(given)) return given;
    if (place != Key::other) return place;
    // No place is told by some clickers, keyboards on the screen and machines far away: what is given tells.
    return given != Key::other ? given : place_of(gives);
}

char32_t character_of(std::string_view gives) {
    if (gives.size() != 2) return 0;
    const auto lead = static_cast<unsigned char>(gives[0]), next = static_cast<unsigned char>(gives[1]);
    if ((lead != 0xc2 && lead != 0xc3) || (next & 0xc0) != 0x80) return 0;
    const char32_t character = (static_cast<char32_t>(lead & 0x1f) << 6) | (next & 0x3f);
    return character >= 0xa1 ? character : 0;
}

std::string character_words(char32_t character) {
    const bool small = character >= 0xe0 && character <= 0xfe && character != 0xf7;
    const char32_t capital = small ? character - 0x20 : character;
    return {static_cast<char>(0xc0 | (capital >> 6)), static_cast<char>(0x80 | (capital & 0x3f))};
}

}  // namespace slopewise
