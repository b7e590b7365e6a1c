// The questions that lie on the logbook's sheet as slips: whether to delete, and who flies.
#pragma once

#include "ui/action.h"
#include "ui/screens/logbook_ui.h"

namespace slopewise {

// Draws the slip of what is asked now, and ends the question when it is answered.
void draw_logbook_slip(const LogbookView& sheet, LogbookUi& ui, Actions& actions);

}  // namespace slopewise
