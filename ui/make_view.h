// Engine state to pilot units and finished words: everything a screen shows, once a frame.
#pragma once

#include "ui/view.h"

namespace slopewise {

struct App;

View make_view(const App& app);

}  // namespace slopewise
