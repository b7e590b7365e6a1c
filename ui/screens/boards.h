// What stands in place of the flight: stills side by side, pages that explain.
#pragma once

#include <imgui.h>

#include "ui/action.h"
#include "ui/screens/ink.h"
#include "ui/view.h"
#include "ui/widgets/paper.h"

namespace slopewise {

void draw_board(ImDrawList* list, ImVec2 min, ImVec2 max, const View& view);

// Ink anywhere on it; its shares are of the figure, which has the same shape in every window.
InkSheet ink_over_board(ImVec2 min, ImVec2 max, const View& view);

}  // namespace slopewise
