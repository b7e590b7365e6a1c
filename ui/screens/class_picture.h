// The picture as a class sees it: the flight or a board with the ink over it, and under it the question. The
// same in the instructor's window and in the class window.
#pragma once

#include <imgui.h>

#include "ui/action.h"
#include "ui/view.h"

namespace slopewise {

// Fills the rectangle. `by_hand`: the levers can be dragged and the picture drawn upon, in the instructor's
// window.
Actions draw_class_picture(ImDrawList* list, ImVec2 min, ImVec2 max, const View& view, bool by_hand);

}  // namespace slopewise
