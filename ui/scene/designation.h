// Runway numbers as painted strokes: our own shapes, straight-edged with cut corners, read on approach.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "ui/scene/projection.h"

namespace slopewise {

// One convex piece of a stroke, in metres: x along the landing direction from the foot of the number,
// y to the right of its middle.
struct StrokePiece {
    WorldPoint corner[4];
};

inline constexpr double designation_height_m = 18.288;  // 60 ft: AIM 2-3-3 b, Horonjeff p. 316

// The strokes of "27", of "09L" (the letter stands nearer the threshold), and so on. Unknown characters
// are left out. `scale` narrows the number for a narrow runway.
std::vector<StrokePiece> designation_strokes(std::string_view designator, double scale);

// Length along the runway that a designator takes (m).
double designation_length_m(std::string_view designator);

// What the other end of the runway is called: "27" for "09", "09R" for "27L"; empty if it is not a number.
std::string opposite_designator(std::string_view designator);

}  // namespace slopewise
