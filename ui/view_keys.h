// What the sheet about keys and fingers shows.
#pragma once

#include <array>
#include <string>
#include <string_view>
#include <vector>

namespace slopewise {

struct KeysView {
    struct Row {
        std::string what;    // "nose up"
        std::string key;     // "Down arrow"
        bool asked = false;  // the next key pressed is taken for it
    };
    std::vector<Row> rows;  // in the order of the commands
    bool sticky = false;    // held keys stay after a press
    bool thumb_pads = false;
    std::string news;  // "E was for more power: it has changed places"; empty mostly
};

// What has to be known about keys, a line each.
inline constexpr std::array<std::string_view, 5> key_notes{
    "Nothing needs two keys at once. A letter is the key that writes it on your keyboard; where yours writes "
    "another alphabet, the key that stands where that letter is on a United States keyboard.",
    "Tab, Enter and Escape are the program's own. Shift, Control, Alt and the keys F1, F3, F5 to F7 and F10 "
    "to F12 belong to the machine. Tab goes from one thing to the next; on sheets the arrows go both ways.",
    "Escape always pauses the flight, and so does the space bar unless it was given to a command.",
    "Sheets keep the letters that stand on their buttons, and a class has its own keys: B or . black, L "
    "lights, I "
    "the path from the side, V counts, W class window, O go on with it, Y labels, Z picture alone, 1 to 8 "
    "hands, Page up "
    "and Page down.",
    "With sticky keys one press holds nose, power, trim, look and path help. Press again, or the opposite, "
    "to let go. "
    "Going around and pausing let go of everything."};

}  // namespace slopewise
