// Engine state to pilot units and finished words: everything a screen shows, once a frame.
#pragma once

#include "ui/view.h"

namespace slopewise {

struct App;

// Into the view shown last: in a steady flight nothing is made anew that did not change.
void make_view(const App& app, View& view);

View make_view(const App& app);

}  // namespace slopewise
