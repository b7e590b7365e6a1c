// One detector a student error. Every figure is common practice, no source, unless a source stands beside it;
// they were set on one set of model pilots' flights and are held to another.
#pragma once

#include "review/diagnosis/evidence.h"

namespace slopewise::detect {

// The figures that the cards tell in words (fault.cpp).
inline constexpr double excessive_sink_fpm = 1000.0;
inline constexpr double late_flap_ft = 400.0;
inline constexpr double balloon_ft = 40.0;
inline constexpr double idle_below_ft = 500.0;
inline constexpr double near_ground_ft = 200.0;
inline constexpr double most_inside = 0.35, least_inside = 0.05;  // shares of the time

// decision
Evidence pressed_on(const Approach& approach);
Evidence partial_go_around(const Approach& approach);

// energy
Evidence stretching(const Approach& approach);
Evidence low_and_slow(const Approach& approach);
Evidence excessive_sink(const Approach& approach);
Evidence diving(const Approach& approach);
Evidence idle_power(const Approach& approach);
Evidence too_fast(const Approach& approach);

// path
Evidence wind_ignored(const Approach& approach);
Evidence late_power(const Approach& approach);
Evidence over_correcting(const Approach& approach);
Evidence low_picture(const Approach& approach);
Evidence lights_misread(const Approach& approach);

// near the ground
Evidence ducking_under(const Approach& approach);
Evidence flattening(const Approach& approach);
Evidence chasing_lights(const Approach& approach);

// the hand
Evidence over_controlling(const Approach& approach);
Evidence chasing_needle(const Approach& approach);
Evidence not_trimming(const Approach& approach);

// the eyes, where the share of time inside was measured
Evidence staring_inside(const Approach& approach);
Evidence never_inside(const Approach& approach);

// flap
Evidence late_flap(const Approach& approach);
Evidence balloon(const Approach& approach);
Evidence flap_too_fast(const Approach& approach);
Evidence flap_raised_low(const Approach& approach);

}  // namespace slopewise::detect
