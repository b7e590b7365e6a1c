// Which board is shown, and its labels; the ink.
#pragma once

#include <imgui.h>

#include "ui/action.h"
#include "ui/view.h"
#include "ui/widgets/paper.h"

namespace slopewise {

void draw_boards_panel(Column& column, const View& view, Actions& actions);

}  // namespace slopewise
