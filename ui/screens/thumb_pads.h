// Two pads for the thumbs in the view's lower corners. On one the thumb is the power lever: it moves the
// lever as far as it moves, from wherever it came down, and leaves it where it lets go. On the other it is
// the stick: its datum is where the thumb came down, and let go it springs back to trim. Sizes are in layout
// pixels.
#pragma once

#include <imgui.h>

#include "ui/action.h"
#include "ui/screens/screens.h"
#include "ui/view.h"

namespace slopewise {

struct ThumbPads {
    FingerArea power, stick;
    float travel_px = 0;  // of the power lever from shut to full, and of the stick from full to full
};

// In the lower corners of what of the view is left free, from `min` to `max`.
ThumbPads place_thumb_pads(ImVec2 min, ImVec2 max, bool stick_left);

// What thumbs on the pads do. `free`: false while paused, which lets go; a thumb that still rests there then
// has to come down anew.
Actions follow_thumbs(const ThumbPads& places, const PadsView& pads, bool free, ThumbPadsUi& ui);

void draw_thumb_pads(ImDrawList* list, const ThumbPads& places, const PadsView& pads,
                     const InstrumentsView& instruments, const ThumbPadsUi& ui);

}  // namespace slopewise
