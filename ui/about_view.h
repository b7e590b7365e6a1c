// The sheet about the program itself: its view and its words.
#pragma once

#include "ui/app.h"

namespace slopewise {

void about_view(const App& app, AboutView& view);
std::string about_text(const View& view);

}  // namespace slopewise
