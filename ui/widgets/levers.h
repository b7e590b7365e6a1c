// What the left and right hands move: stick, trim, power and flap, each drawn where it stands.
#pragma once

#include <imgui.h>

#include "ui/action.h"
#include "ui/view.h"

namespace slopewise {

// A lever's part of the shelf. Titles stand along its lower edge; `worded` adds the words at its ends.
struct LeverPlace {
    ImVec2 min, max;
    bool worded = false;
    float reach_px = 0;  // how far beyond its place the hand may take hold, to either side
};

// Where the stick is held against its trim datum: pushed is up, pulled is down. It is shown, not moved, here.
void draw_stick(ImDrawList* list, const LeverPlace& place, const InstrumentsView& instruments);

// Each of these can be dragged, and says what the hand asked for.
Actions draw_trim(ImDrawList* list, const LeverPlace& place, const InstrumentsView& instruments);
Actions draw_throttle(ImDrawList* list, const LeverPlace& place, const InstrumentsView& instruments);
Actions draw_flap(ImDrawList* list, const LeverPlace& place, const InstrumentsView& instruments);

// Widths that they need (px).
float stick_width(bool worded);
float trim_width(bool worded);
float throttle_width();
float flap_width(const InstrumentsView& instruments);

}  // namespace slopewise
