// The path held by power alone: what the track says of it.
#pragma once

#include <vector>

#include "drill/drill.h"
#include "review/deviations.h"

namespace slopewise {

// How often the path was crossed: from a tenth of a degree on one side to as much on the other, so that
// flying along it counts as none.
int path_crossings(TrackPoints points);

// path_percent (by the scenario's tolerance), speed_percent, crossings_per_min.
std::vector<Figure> path_power_figures(const Scenario& scenario, const Track& track);

}  // namespace slopewise
