// Things that are on or off, a row each, on paper.
#pragma once

#include "ui/widgets/controls.h"

namespace slopewise {

// The words on the left, the switch with its own word on the right; true in the frame in which it is pressed.
bool switch_row(Column& column, const char* words, bool on);

}  // namespace slopewise
