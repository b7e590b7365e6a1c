// Paints hedges, trees and woods: real sizes that tell the eye its height.
#pragma once

#include <cstdint>

#include "ui/scene/ground_layout.h"
#include "ui/scene/painter.h"

namespace slopewise {

void draw_hedge(const Painter& painter, const Hedge& hedge);
void draw_tree(const Painter& painter, const Tree& tree, std::uint32_t index);  // the index varies its shape
void draw_wood(const Painter& painter, const GroundLayout& ground, const Wood& wood);

}  // namespace slopewise
