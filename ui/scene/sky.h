// The sky down to the exact horizon, and the haze that the visibility makes.
#pragma once

#include "ui/scene/painter.h"

namespace slopewise {

// Extinction by the meteorological visibility at 5 % contrast: Koschmieder, 3.0 / V.
Haze haze_for(double visibility_m);

void draw_sky(const Painter& painter, double visibility_m);

}  // namespace slopewise
