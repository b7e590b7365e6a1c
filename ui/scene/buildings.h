// Paints houses, barns and hangars: boxes with a ridged roof, lit by the sun.
#pragma once

#include "ui/scene/ground_layout.h"
#include "ui/scene/painter.h"

namespace slopewise {

void draw_house(const Painter& painter, const House& house);

// A plain box standing on the ground.
struct Block {
    WorldPoint middle;
    double heading_rad, length_m, width_m, height_m;
};
void draw_block(const Painter& painter, const Block& block, const Rgb& colour);

}  // namespace slopewise
