// The quiet way from a sheet to where its numbers come from: the same words and key on each.
#pragma once

#include "ui/action.h"
#include "ui/widgets/controls.h"

namespace slopewise {

inline constexpr ButtonWords sources_words{"Where the numbers come from", Weight::quiet, "Q"};

// As a row of its own, its words on the column's edge.
void lead_to_sources(Column& column, Actions& actions);

// At the right end of the row of buttons just set, which takes `used` pixels from the left; where that leaves
// no room, below it.
void lead_to_sources_beside(Column& page, float used, Actions& actions);

}  // namespace slopewise
