// Exclusive choices as rows on paper, each with a line about it.
#pragma once

#include "ui/widgets/controls.h"

namespace slopewise {

// A mark, the name, and beneath it the words about it; true in the frame in which it is pressed.
bool option_row(Column& column, const char* name, std::string_view about, bool chosen);

}  // namespace slopewise
