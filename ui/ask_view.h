// The questions as the instructor sees them, and as lines for a screen reader.
#pragma once

#include "ui/view.h"

namespace slopewise {

struct App;

void ask_view(const App& app, AskView& view);
void ask_text(const View& view, std::string& text);           // of the panel
void ask_shown_text(const AskShown& ask, std::string& text);  // of what the class sees

}  // namespace slopewise
