// The approach as it stands, as a lesson that begins there: what an instructor changes one thing of.
#pragma once

#include "base/units.h"
#include "lesson/attempt.h"

namespace slopewise {

// Nearer than this to the aim point, or on the ground, there is nothing left to begin: an approach is begun
// where it was put last. A quarter of a sea mile, fifteen seconds at 60 kt (common practice, no source).
inline constexpr double nearest_start_m = m_from_nm(0.25);

// A start keeps the eye so far above the level of the aim point, and no further above the path than this:
// what is further off is no approach (our figures).
inline constexpr double least_elevation_rad = rad_from_deg(0.5);
inline constexpr double most_high_rad = rad_from_deg(3.0);

// Where the flight is: the distance, the angle off the path, the airspeed and the flap lever of this moment,
// and a line parallel to the path. Before the first tick: as the lesson has it.
Start start_as_it_is(const Scenario& scenario, const Attempt& attempt);

// The same, as far as a flight can begin there. `began`: where it was put last.
Start start_now(const Scenario& scenario, const Attempt& attempt, const Start& began);

// The lesson begun there. What has failed has failed from the start; what waits for a place or for a time
// after the start waits for it anew. The student has everything: who flies what is no part of a class's
// lesson.
Lesson approach_now(const Scenario& scenario, const Attempt& attempt, const Start& began);

}  // namespace slopewise
