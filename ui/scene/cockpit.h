// The nose and the glareshield of a plain light single: the frame that keeps the eye's place.
#pragma once

#include "ui/scene/painter.h"
#include "ui/view.h"

namespace slopewise {

// Top of the nose, straight ahead (px): look_over_rad below the body axis.
double nose_line_y_px(const Projection& projection, const SceneView& scene);

// Below this nothing of the world is seen anywhere across the view (px).
double world_bottom_y_px(const Projection& projection, const SceneView& scene);

void draw_cockpit(const Painter& painter, const SceneView& scene);

}  // namespace slopewise
