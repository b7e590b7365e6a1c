// The chosen approach as a textbook would draw it: from the side, heights stretched.
#pragma once

#include <imgui.h>

#include "ui/view.h"

namespace slopewise {

void draw_choice_figure(ImDrawList* list, ImVec2 min, ImVec2 max, const ChoiceView& choice);

}  // namespace slopewise
