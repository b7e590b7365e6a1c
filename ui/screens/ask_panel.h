// The instructor's panel of questions.
#pragma once

#include <imgui.h>

#include "ui/action.h"
#include "ui/screens/screens.h"
#include "ui/view.h"
#include "ui/widgets/paper.h"

namespace slopewise {

void draw_ask_panel(Column& column, const View& view, UiState& ui, Actions& actions);

}  // namespace slopewise
