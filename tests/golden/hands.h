// Who flies the golden flights.
#pragma once

#include <cstdint>
#include <string_view>

#include "lesson/demonstrate.h"

namespace slopewise::golden {

// The model pilot of that name, until scoring ends.
void by_pilot(std::string_view name, std::uint64_t seed, const Scenario& scenario, Attempt& attempt);

// Hands that know nothing: every two seconds other controls, into the stall, the flap limits and the ground.
void by_wild_hands(std::uint64_t seed, double seconds, const Scenario& scenario, Attempt& attempt);

// On the path, then full power at 200 ft wheel height, the nose up, and flap up in stages.
void by_one_who_goes_around(const Scenario& scenario, Attempt& attempt);

}  // namespace slopewise::golden
