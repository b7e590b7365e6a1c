// A whole View of an invented flight at an invented airfield, for drawing every screen without the engine.
#pragma once

#include "ui/view.h"

namespace slopewise {

View sample_view();

}  // namespace slopewise
