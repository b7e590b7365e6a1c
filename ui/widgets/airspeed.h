// The airspeed indicator: arcs from the aircraft's data, a bug at the target, large digits.
#pragma once

#include "ui/view.h"
#include "ui/widgets/dial.h"

namespace slopewise {

// Where a speed stands on the dial (rad, clockwise from the top). The scale opens up below the flap
// limit, where an approach is flown, and is closer above it.
double airspeed_angle_rad(const InstrumentsView& instruments, double airspeed_kt);

void draw_airspeed(ImDrawList* list, const Dial& dial, const InstrumentsView& instruments);

}  // namespace slopewise
