// A small labelled inset that shows the lights larger, for screens that cannot show what the eye resolves.
#pragma once

#include "ui/scene/painter.h"
#include "ui/view.h"

namespace slopewise {

// How many times larger the inset shows the lights; 0 when they are far enough apart to need none.
int magnifier_factor(double lamp_gap_px, double image_width_px);

// Where it ends below the view's upper edge (px), in a view of this width.
double magnifier_bottom_px(double image_width_px);

// In the upper right corner of the view.
void draw_magnifier(const Painter& painter, const SceneView& scene);

}  // namespace slopewise
