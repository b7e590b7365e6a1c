// The sheet about sticks, yokes and levers: its view and its words.
#pragma once

#include "ui/app.h"

namespace slopewise {

void controllers_view(const App& app, ControllersView& view);
std::string controllers_text(const ControllersView& view);
// What changes all the time: there to be read, never spoken unasked.
std::string controllers_live_text(const ControllersView& view);

}  // namespace slopewise
