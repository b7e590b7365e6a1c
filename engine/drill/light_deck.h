// Cards of the slope lights at a glance.
#pragma once

#include <cstdint>
#include <vector>

#include "drill/card.h"
#include "drill/drill.h"

namespace slopewise {

// The pictures that a system of lights can show, highest first, as one says them: "well high" ... "well low"
// of four units, "high", "on path", "low" of two.
std::vector<std::string> light_choices(const LightSystem& lights);

// Which of them a number of white units is.
int light_choice(const LightSystem& lights, int white_count);

// Cards whose eye is drawn off the path, but never so near to a change of a unit's colour that the picture
// could be argued about: its blend's width away from it.
std::vector<Card> light_deck(const LightCards& settings, int items, const Scenario& base, std::uint64_t seed);

}  // namespace slopewise
