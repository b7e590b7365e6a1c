// The list of attempts on the logbook's sheet: a row each, of which only what is in the window is drawn.
#pragma once

#include "ui/action.h"
#include "ui/screens/logbook_ui.h"
#include "ui/widgets/paper.h"

namespace slopewise {

// All rows, newest first; the chosen one with what can be done with it.
void draw_logbook_rows(Column& page, const LogbookView& sheet, LogbookUi& ui, Actions& actions);

// Those that were deleted.
void draw_deleted_rows(Column& page, const LogbookView& sheet, LogbookUi& ui, Actions& actions);

// Words cut to a width, with an ellipsis where something is missing.
void text_within(ImDrawList* list, ImVec2 place, float width, TextSize size, ImU32 colour,
                 std::string_view words, bool bold = false);

}  // namespace slopewise
