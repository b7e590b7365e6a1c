// The last seconds of an axis: what it gives, thin, and what is made of it, thick.
#pragma once

#include <vector>

#include "ui/widgets/paper.h"

namespace slopewise {

// Both -1 ... +1, oldest first; `flies` false: nothing is made of it.
void axis_plot(Column& column, const std::vector<float>& given, const std::vector<float>& made, bool flies);

}  // namespace slopewise
