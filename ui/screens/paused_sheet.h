// The sheet laid on the window while the flight stands still.
#pragma once

#include "ui/action.h"
#include "ui/screens/screens.h"
#include "ui/view.h"

namespace slopewise {

Actions draw_paused_sheet(const FlightView& flight, UiState& ui);

}  // namespace slopewise
