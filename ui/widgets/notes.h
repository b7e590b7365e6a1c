// Short words on paper that stand beside something: a thing to attend to, a fact with its name.
#pragma once

#include <string_view>

#include "ui/widgets/paper.h"

namespace slopewise {

// In the colour of attention, with its mark.
void attention_note(Column& column, std::string_view words);

// The name in small print, and the words beside it, broken into lines where they must be.
void fact_row(Column& column, std::string_view name, std::string_view words);

}  // namespace slopewise
