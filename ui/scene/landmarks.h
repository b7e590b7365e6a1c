// Things whose size everyone knows: a power line's masts and wires, parked aircraft, and the windsock.
#pragma once

#include "ui/scene/ground_layout.h"
#include "ui/scene/painter.h"

namespace slopewise {

void draw_pylon(const Painter& painter, const Pylon& pylon);
void draw_aircraft(const Painter& painter, const ParkedAircraft& aircraft);

// A sock 3.6 m long and 0.9 m wide at its mouth (ICAO Annex 14 5.1.1, from memory), in bands of orange and
// white. It hangs in a calm and stands level from 15 kt (common practice, no source); a headwind brings it to
// the eye.
void draw_windsock(const Painter& painter, const WorldPoint& foot, double headwind_mps, double time_s);

// How far the sock is lifted: 0 hanging ... 1 level.
double windsock_lift(double wind_mps);

}  // namespace slopewise
