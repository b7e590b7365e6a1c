// Rain on the screen: a few drops that gather, sit and run off, never in front of the eye for long.
#pragma once

#include "ui/scene/painter.h"

namespace slopewise {

void draw_rain(const Painter& painter, double time_s);

}  // namespace slopewise
