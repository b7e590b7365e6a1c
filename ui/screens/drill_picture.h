// What is seen of a drill's item: the picture, the dials under it, the approach from the side.
#pragma once

#include "ui/screens/screens.h"
#include "ui/widgets/paper.h"

namespace slopewise {

// Fills the rectangle with what the item shows. The mark along the runway is moved by pressing the picture.
Actions draw_drill_picture(ImDrawList* list, ImVec2 min, ImVec2 max, const View& view);

}  // namespace slopewise
