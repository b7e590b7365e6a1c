// The current screen as plain text, for the page around the canvas: what a screen reader speaks.
#pragma once

#include "ui/screens/screens.h"

namespace slopewise {

// In flight only what changes rarely is told (status, calls), so that a reader is not flooded.
Mirror make_mirror(Screen screen, const View& view);

}  // namespace slopewise
