// Paints houses, barns and hangars: boxes with a ridged roof, lit from behind the left shoulder.
#pragma once

#include "ui/scene/ground_layout.h"
#include "ui/scene/painter.h"

namespace slopewise {

void draw_house(const Painter& painter, const House& house);

}  // namespace slopewise
