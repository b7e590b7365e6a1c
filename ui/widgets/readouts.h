// Instruments as digits alone: where a dial would be too small to read, and the airspeed for the back row.
#pragma once

#include <imgui.h>

#include "ui/view.h"

namespace slopewise {

// One under another, units in small print below them; the airspeed only where it has no dial.
void draw_readouts(ImDrawList* list, ImVec2 min, float height, const InstrumentsView& instruments,
                   bool airspeed_too);
float readouts_width();  // wide enough for any value, so that nothing moves

// The airspeed large enough for the last row of a classroom, in the middle of a place of this height.
void draw_back_row(ImDrawList* list, ImVec2 min, float height, const InstrumentsView& instruments);
float back_row_width();

}  // namespace slopewise
