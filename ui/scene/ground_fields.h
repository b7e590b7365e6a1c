// Dresses bare fields: crop rows, the grain of grass, woods, and hedges with their trees between them.
#pragma once

#include <span>

#include "ui/scene/ground_builder.h"
#include "ui/scene/shape.h"

namespace slopewise {

enum class Growth { pasture, rows, wood };

struct Field {
    Shape shape;
    Rgb colour;
    double least_sight_m = 0;  // how near the eye ever comes while the field is in view
    Growth growth = Growth::pasture;
};

// Where two fields meet.
struct Boundary {
    WorldPoint from, to;
};

void dress_fields(GroundBuilder& make, std::span<const Field> fields);

// A hedge with gates and trees, or an open furrow.
void dress_boundary(GroundBuilder& make, const Boundary& boundary);

// Lines of trees far off, where fields are only their mean colour: the plain is land, not sea.
void dress_skyline(GroundBuilder& make);

// Lamps scattered over the country, for the night.
void dress_night(GroundBuilder& make);

}  // namespace slopewise
