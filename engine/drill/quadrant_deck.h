// Cards of the four energy states: high or low, fast or slow, seen for a moment; what is moved first?
#pragma once

#include <cstdint>
#include <vector>

#include "drill/card.h"
#include "drill/drill.h"
#include "review/criteria.h"
#include "review/energy.h"

namespace slopewise {

enum class FirstAction { more_power, less_power, nose_up, nose_down };

// Too much or too little energy asks for power; enough of it in the wrong place, for the nose (FAA-H-8083-3C,
// Airplane Flying Handbook, chapter 4, energy management; recalled). Schools differ in what they say a
// control is for, not in this; the centre asks for nothing and has no answer here.
FirstAction first_action(Quadrant quadrant);

// What a school calls it: "less power, for the path" where power is said to be for the path.
std::string action_words(FirstAction action, Convention convention);

std::vector<Card> quadrant_deck(const QuadrantCards& settings, int items, const Scenario& base,
                                Convention convention, std::uint64_t seed);

}  // namespace slopewise
