// The larger aircraft ahead: a plain twin-engined transport at its true size, so that the eye can judge how
// far it is; its lamps, the puff of its tyres, and the line it came down on.
#pragma once

#include "ui/scene/painter.h"

namespace slopewise {

void draw_leader(const Painter& painter, const LeaderView& leader, double headwind_mps, double time_s);

// A place on its body: metres ahead of, right of and above the middle of its main wheels, at a span of 34 m.
WorldPoint place_on(const LeaderView& leader, double ahead_m, double right_m, double up_m);

// How long the puff of its tyres is seen (common practice, no source).
inline constexpr double tyre_puff_s = 2.0;

}  // namespace slopewise
