// The picture on the sheet: the side profile with its tolerance wedge, the lights along the path, and the
// airspeed, over one distance axis; as an SVG element.
#pragma once

#include <string>

#include "debrief/reviewed_flight.h"

namespace slopewise {

std::string sheet_plot(const ReviewedFlight& flight);

}  // namespace slopewise
