// The player under a replay: where it stands, the time line, and what can be pressed.
#pragma once

#include "ui/action.h"
#include "ui/widgets/paper.h"

namespace slopewise {

// Height it takes at a width (px).
float replay_bar_height(float width);

Actions draw_replay_bar(Column column, const View& view);

}  // namespace slopewise
