// What people have made of the country, and its water: roads, villages, the airfield, the river and the pond.
#pragma once

#include "ui/scene/ground_builder.h"

namespace slopewise {

void dress_works(GroundBuilder& make);

}  // namespace slopewise
