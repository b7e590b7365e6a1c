// Cards of "where would we hit": the flight moves straight, stops, and the point that stood still is marked.
// (Pilots judge the angle of their path well and its aim point poorly, so that this is drilled by itself:
// Acree, NASA 1981, recalled.)
#pragma once

#include <cstdint>
#include <vector>

#include "drill/card.h"
#include "drill/drill.h"

namespace slopewise {

// No flare, the wheels left out: the point that the eye's straight path meets.
std::vector<Card> impact_deck(const ImpactCards& settings, int items, const Scenario& base,
                              std::uint64_t seed);

// How far the marked point is off the true one, as an angle at the eye (rad): positive marked too far.
double mark_error_rad(const Card& card, const Runway& runway, double marked_beyond_m);

}  // namespace slopewise
