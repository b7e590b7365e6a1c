// The altimeter: a long hand for hundreds of feet, a short one for thousands, and the digits.
#pragma once

#include "ui/view.h"
#include "ui/widgets/dial.h"

namespace slopewise {

void draw_altimeter(ImDrawList* list, const Dial& dial, const InstrumentsView& instruments);

}  // namespace slopewise
