// The question under the picture, its choices, the hands that were counted and what was right.
#pragma once

#include <imgui.h>

#include "ui/action.h"
#include "ui/view.h"
#include "ui/widgets/paper.h"

namespace slopewise {

// How tall it wants to be; without a question, nothing.
float ask_board_height(float width, const AskShown& ask);

// Paper under the picture: it covers nothing, since the horizon and the dials are what the answer is read
// from.
void draw_ask_board(ImDrawList* list, ImVec2 min, ImVec2 max, const AskShown& ask);

}  // namespace slopewise
