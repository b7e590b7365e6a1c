// The time of an attempt as a line that a hand can move along, with its marks.
#pragma once

#include <optional>

#include <imgui.h>

#include "ui/view_replay.h"

namespace slopewise {

float time_line_height();

// Fills the rectangle. The tick that the hand asks for while it holds the line; near a mark, the mark's.
std::optional<double> draw_time_line(ImDrawList* list, ImVec2 min, ImVec2 max, const ReplayView& replay);

}  // namespace slopewise
