// Paints the country: the far plain by its mean colours, the near fields one by one, and what lies upon them.
#pragma once

#include "ui/scene/ground_layout.h"
#include "ui/scene/painter.h"

namespace slopewise {

// Fields, crops, water, roads, grass: everything flat. Paint before the runway.
void draw_ground(const Painter& painter, const GroundLayout& ground);

// Hedges, trees, woods and houses, far to near. Paint after the runway.
void draw_standing(const Painter& painter, const GroundLayout& ground);

}  // namespace slopewise
