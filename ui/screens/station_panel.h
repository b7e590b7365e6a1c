// The instructor's station.
#pragma once

#include <imgui.h>

#include "ui/action.h"
#include "ui/view.h"
#include "ui/widgets/paper.h"

namespace slopewise {

void draw_station_panel(Column& column, const View& view, Actions& actions);

}  // namespace slopewise
