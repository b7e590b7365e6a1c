// A small light aircraft seen from its right side, as a diagram shows it.
#pragma once

#include <imgui.h>

namespace slopewise {

// Nose to the right; `length` in pixels from nose to tail, `pitch_rad` positive nose up.
void aircraft_mark(ImDrawList* list, ImVec2 centre, float length, float pitch_rad, ImU32 colour, ImU32 paper);

}  // namespace slopewise
