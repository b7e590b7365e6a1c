// The mouse as a stick: press in the view and move up to push, down to pull; let go and it is back at trim.
#pragma once

#include <imgui.h>

#include "ui/action.h"
#include "ui/screens/screens.h"
#include "ui/view.h"

namespace slopewise {

// What a drag of so many pixels gives, down as a pull: -1 pushed ... +1 pulled, gentle near where it began.
double stick_from(float way_px, float travel_px);

// Draws the datum and the hand over the view while the stick is held. `free`: false while paused, which lets
// go.
Actions mouse_stick(ImDrawList* list, ImVec2 min, ImVec2 max, const InstrumentsView& instruments, bool free,
                    UiState& ui);

}  // namespace slopewise
