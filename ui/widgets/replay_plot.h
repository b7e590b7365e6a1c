// The whole attempt from the side, and under it airspeed and controls, on one distance axis with one cursor.
#pragma once

#include <optional>

#include <imgui.h>

#include "ui/view.h"

namespace slopewise {

// `seat`: the path, its lights and the names of the flap settings.
// Fills the rectangle; as many traces as there is room for. The tick that the hand asks for while it holds
// the picture.
std::optional<double> draw_replay_plot(ImDrawList* list, ImVec2 min, ImVec2 max, const FlightView& seat,
                                       const ReplayView& replay);

}  // namespace slopewise
