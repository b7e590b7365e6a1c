// The answers that a card offers, each with the number that chooses it.
#pragma once

#include "ui/view.h"
#include "ui/widgets/paper.h"

namespace slopewise {

// Two beside one another where they are short. Once revealed, the right one and the one that was said carry a
// mark and a word. Returns the one pressed, or -1.
int draw_answers(Column& column, const DrillView& sheet);

}  // namespace slopewise
