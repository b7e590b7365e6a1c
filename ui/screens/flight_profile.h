// The live side profile over the view: in its corner, and never over the runway or its lights.
#pragma once

#include <imgui.h>

#include "ui/scene/projection.h"
#include "ui/view.h"

namespace slopewise {

// True when the rectangle covers any part of the runway or of its lights, as seen in the projection.
bool covers_runway(const Projection& projection, const SceneView& scene, ImVec2 min, ImVec2 max);

// The room it takes in a view of this size (px).
ImVec2 profile_inset_size(ImVec2 view_max);

// From `corner` down and to the right; nothing while it would cover the runway. `scene_max` is the
// frame of the picture, `view_max` what is seen of it.
void draw_profile_inset(ImDrawList* list, ImVec2 scene_max, ImVec2 view_max, ImVec2 corner,
                        const FlightView& flight);

}  // namespace slopewise
