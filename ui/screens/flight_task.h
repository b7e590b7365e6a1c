// The task of a drill over the view: what is asked now, and who has which control.
#pragma once

#include <imgui.h>

#include "ui/view.h"

namespace slopewise {

// From `place` down, in lines at most `width` pixels wide. Returns where the next thing may stand; nothing
// is drawn where no drill is flown.
float draw_flight_task(ImDrawList* list, ImVec2 place, float width, const FlownDrillView& drill);

}  // namespace slopewise
