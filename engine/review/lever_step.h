// The largest step of the throttle lever: what it moved within two seconds.
#pragma once

#include "review/deviations.h"

namespace slopewise {

inline constexpr double lever_step_s = 2.0;

// Share of the lever's travel, positive either way; 0 for a single point.
double largest_lever_step(TrackPoints points);

}  // namespace slopewise
