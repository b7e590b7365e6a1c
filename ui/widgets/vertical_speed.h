// The vertical-speed indicator: level at the left, climbing upwards, sinking downwards.
#pragma once

#include "ui/view.h"
#include "ui/widgets/dial.h"

namespace slopewise {

void draw_vertical_speed(ImDrawList* list, const Dial& dial, const InstrumentsView& instruments);

}  // namespace slopewise
