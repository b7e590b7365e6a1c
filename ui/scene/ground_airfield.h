// The airfield itself: mown strip, taxiway, apron, hangars, parked aircraft, windsock.
#pragma once

#include "ui/scene/ground_builder.h"

namespace slopewise {

void dress_airfield(GroundBuilder& make);

}  // namespace slopewise
