// What the logbook's sheet remembers between frames: the question on it, and what is being written.
#pragma once

#include <array>
#include <string>

namespace slopewise {

struct LogbookUi {
    enum class Asks { nothing, remove, erase, student };

    Asks asks = Asks::nothing;
    std::string id, words;  // the attempt that is asked about, and how it is called
    bool deleted_open = false;
    bool just_asked = false;       // in the first frame of the question
    std::array<char, 161> name{};  // of 40 letters
    int shown = -1;                // index of the row that was chosen in the frame before
};

}  // namespace slopewise
