// The current screen as plain text, for the page around the canvas: what a screen reader speaks.
#pragma once

#include "ui/screens/screens.h"

namespace slopewise {

// Written over what the mirror held. In flight only what changes rarely is told (status, calls), so that a
// reader is not flooded.
void make_mirror(Screen screen, const View& view, Mirror& mirror);

}  // namespace slopewise
