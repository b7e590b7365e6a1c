// The long shadows of a low sun in front, which fall towards the eye. None where the sun is high or hidden.
#pragma once

#include "ui/scene/painter.h"

namespace slopewise {

// From a thing of this breadth and height.
void draw_long_shadow(const Painter& painter, const WorldPoint& foot, double half_breadth_m, double height_m,
                      double presence);

// From a wall between two places; walls that join throw shadows that join.
void draw_wall_shadow(const Painter& painter, const WorldPoint& from, const WorldPoint& to, double height_m,
                      double presence);

}  // namespace slopewise
