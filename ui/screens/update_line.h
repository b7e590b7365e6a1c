// A newer version of the program waits to be taken: said with a button on the sheets between flights.
#pragma once

#include "ui/action.h"
#include "ui/view.h"
#include "ui/widgets/paper.h"

namespace slopewise {

// Nothing when none waits.
void update_line(Column& column, const View& view, Actions& actions);

}  // namespace slopewise
