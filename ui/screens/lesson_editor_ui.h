// What the sheets of one's own lessons remember between frames: the question asked, and what is being
// written.
#pragma once

#include <array>
#include <string>
#include <vector>

namespace slopewise {

// A text as it stands in its field, which may be ahead of what the sheet was given.
struct WrittenText {
    std::string given;        // last
    std::vector<char> bytes;  // ends with a zero
};

struct LessonEditorUi {
    bool asks_to_delete = false;
    std::string id, title;  // of the lesson that is asked about
    bool deleted_open = false;
    std::array<WrittenText, 8> texts{};  // one a text field, in their order
};

}  // namespace slopewise
