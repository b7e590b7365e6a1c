// What each key is called: in the kept settings, by the browser, on a key cap and in words.
#pragma once

#include <string>
#include <string_view>

#include "ui/keys.h"

namespace slopewise {

struct KeyName {
    Key key;
    std::string_view id;     // in the kept settings: "page_up"
    std::string_view code;   // of its place, by UI Events KeyboardEvent code Values: "PageUp"; empty: none
    std::string_view cap;    // "PgUp"; at most 8 bytes, so that a string of it takes no memory
    std::string_view words;  // "Page up"
    bool bindable;           // a command of flying may have it
};

const KeyName& name_of(Key key);

// The key of that id; Key::count when there is none.
Key key_of_id(std::string_view id);

// The key at the place of that code, which for keys without a character is their name too ("PageUp", "Home");
// Key::other when it has no name here.
Key place_of(std::string_view code);

// What the key at `place` is, when it gives `gives` (UTF-8, or a name such as "Home", as KeyboardEvent.key).
// The row of digits goes by place, since on a French keyboard its digits would take a second key.
Key key_of(Key place, std::string_view gives);

// The character that a key gives, when it is one that keys are not known by and that the program's letters
// can draw (Latin-1, U+00A1 to U+00FF); 0 otherwise.
char32_t character_of(std::string_view gives);

// As UTF-8, a small letter as its capital.
std::string character_words(char32_t character);

}  // namespace slopewise
