// The picture through the windscreen, back to front: sky, country, runway, lights, nose.
#pragma once

#include <imgui.h>

#include "ui/view.h"

namespace slopewise {

// Fills the rectangle. The country is made when a runway is first seen; those of the last four are
// kept.
void draw_scene(ImDrawList* list, ImVec2 min, ImVec2 max, const SceneView& scene);

}  // namespace slopewise
