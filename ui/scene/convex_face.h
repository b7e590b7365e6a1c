// One face of a solid body, lit by the sun of the hour.
#pragma once

#include <span>

#include "ui/scene/painter.h"

namespace slopewise {

// A face of a body that is convex round `inside`: faces turned away are left out, and the rest hide nothing.
void face(const Painter& painter, std::span<const WorldPoint> corners, const WorldPoint& inside,
          const Rgb& colour, double presence);

// A thin plate, seen from either side.
void plate(const Painter& painter, std::span<const WorldPoint> corners, const Rgb& colour, double presence);

}  // namespace slopewise
