// A slip of paper with the approach from the side, while it is flown: the wedge, the lights' sectors, the
// flown path and the aircraft.
#pragma once

#include <imgui.h>

#include "ui/view.h"

namespace slopewise {

// Fills the rectangle; nothing is drawn where it is too small to be read.
void draw_side_profile(ImDrawList* list, ImVec2 min, ImVec2 max, const SideProfileView& view);

}  // namespace slopewise
