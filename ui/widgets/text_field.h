// One line to be written in, on paper.
#pragma once

#include <span>

#include "ui/widgets/paper.h"

namespace slopewise {

// `text` is UTF-8 and ends with a zero; it takes a quarter as many letters as it has bytes. `hint` stands
// there while it is empty; `begin` gives it the keyboard. True in the frame in which Enter ends the writing.
bool text_field(Column& column, const char* name, const char* hint, std::span<char> text, bool begin);

}  // namespace slopewise
