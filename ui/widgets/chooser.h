// One of several things, gone through one after the other, in a row of paper.
#pragma once

#include <optional>
#include <span>
#include <string>

#include "ui/widgets/controls.h"

namespace slopewise {

// The name on the left, `lit` when what it stands for is happening now; on the right what is chosen between a
// press for the one before and one for the next, which go round. The name goes above where the row is too
// narrow. In a window its presses are found as "before" and "next" under the name.
std::optional<int> chooser(Column& column, const char* name, std::span<const std::string> choices, int chosen,
                           bool lit = false);

}  // namespace slopewise
