// Round things on the screen: crowns of trees, shadows, and the glow of lamps and the sun.
#pragma once

#include "ui/scene/painter.h"

namespace slopewise {

// A disc or ellipse on the screen that fades to nothing over its outer pixel, lighter to the upper left.
void blob(const Painter& painter, const ScreenPoint& centre, double radius_x_px, double radius_y_px,
          const Rgb& light, const Rgb& dark, double alpha = 1.0);

// A patch that fades evenly from its middle to its rim: shadows, glow, wisps of cloud.
void soft_patch(const Painter& painter, const ScreenPoint& centre, double radius_x_px, double radius_y_px,
                const Rgb& colour, double alpha);

// Light about a lamp or the sun: round, bright within and falling off like a halo.
void glow(const Painter& painter, const ScreenPoint& centre, double radius_x_px, double radius_y_px,
          const Rgb& colour, double alpha);

}  // namespace slopewise
