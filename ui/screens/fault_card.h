// The one thing to work on, as a card.
#pragma once

#include "ui/view.h"
#include "ui/widgets/paper.h"

namespace slopewise {

// Symptom, cause, what it could lead to and the correction; the others by name beneath. "No fault stands
// out." where there is none.
void draw_fault_card(Column& column, const FaultView& fault);

}  // namespace slopewise
