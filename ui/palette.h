// The colours of each look. Red and white belong to the lights alone.
#pragma once

#include <imgui.h>

#include "ui/display.h"

namespace slopewise {

struct Palette {
    ImU32 paper, paper_edge, ink, ink_soft, rule;  // sheets
    ImU32 accent, accent_ink;                      // one accent, and text upon it
    ImU32 good, attention;                         // blue and orange, always beside a word or a mark
    ImU32 band;                                    // tolerance fill in plots
    ImU32 lamp_red, lamp_white;                    // the lights alone
    ImU32 shelf, shelf_edge, dial, dial_ink, dial_soft, needle;  // the instrument shelf
    ImU32 strip;                                                 // the veil under the key strip, see-through
    // The airspeed's arcs (Pilot's Handbook of Aeronautical Knowledge), dusty: only the lights are pure.
    ImU32 flap_range, normal_range, caution_range, never_line;
};

const Palette& palette_of(Look look);

}  // namespace slopewise
