// The grain of the ground under the eye: flecks of several sizes, fixed in the world, that stream by near it.
#pragma once

#include "ui/scene/ground_layout.h"
#include "ui/scene/painter.h"

namespace slopewise {

// Upon the fields, under everything else that lies there.
void draw_ground_grain(const Painter& painter, const GroundLayout& ground);

}  // namespace slopewise
