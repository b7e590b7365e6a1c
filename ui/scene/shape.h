// Convex shapes on the ground: their area and middle, and cutting them along a line.
#pragma once

#include <utility>
#include <vector>

#include "ui/scene/projection.h"

namespace slopewise {

using Shape = std::vector<WorldPoint>;

// Through a point, with a normal that points to the positive side.
struct GroundLine {
    double x_m = 0, y_m = 0, normal_x = 1, normal_y = 0;
};

double area_m2(const Shape& shape);
WorldPoint middle_of(const Shape& shape);

// The parts on the positive and the negative side; a side with nothing on it has fewer than three corners.
std::pair<Shape, Shape> cut(const Shape& shape, const GroundLine& line);

// Where the line enters and leaves the shape; false when it misses.
bool crossings(const Shape& shape, const GroundLine& line, WorldPoint& first, WorldPoint& second);

bool contains(const Shape& shape, double x_m, double y_m);

}  // namespace slopewise
