// What the thumb pads are given in a frame.
#pragma once

#include "ui/app.h"

namespace slopewise {

void pads_view(const App& app, PadsView& view);

}  // namespace slopewise
