// The second half of the deviation summary: everything else that was measured, and against what.
#pragma once

#include "ui/view.h"
#include "ui/widgets/paper.h"

namespace slopewise {

void draw_measures(Column& page, const View& view);

}  // namespace slopewise
