// The fixed places of the country: its roads, river, pond and villages, and what must keep clear of them.
#pragma once

#include <span>

#include "ui/scene/projection.h"

namespace slopewise {

// A line across the country with a width: a road or a river.
struct Course {
    std::span<const WorldPoint> points;
    double half_width_m;
};

std::span<const Course> roads();
const Course& river();
std::span<const WorldPoint> pond();

// Middle and radius of each group of houses.
struct Village {
    WorldPoint middle;
    double radius_m;
    int houses;
};
std::span<const Village> villages();

// Distance on the ground from a point to the nearest point of a course's middle line (m).
double distance_to_m(const Course& course, double x_m, double y_m);

// Whether a thing may stand here: off the strip of a runway of this length, the roads, the water, and
// low under the last half mile of the approach.
bool is_free(double x_m, double y_m, double runway_length_m, double margin_m);

}  // namespace slopewise
