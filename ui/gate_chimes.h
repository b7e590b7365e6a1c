// The gates as they are passed: each is heard once and its height is shown, so that nobody needs ears for it.
#pragma once

#include <cstdint>
#include <string>

namespace slopewise {

struct GateChimes {
    int next = 0;              // into gate_heights_ft: the highest not yet passed
    int chimes = 0;            // heard in this flight so far
    std::int64_t ticks = 0;    // for which the last is still shown
    bool height_shown = true;  // a covered or failed altimeter is not given away
};

// Gates above the height at which a flight begins (m, wheels above the threshold) are never passed.
GateChimes begin_gates(double wheel_height_m);

// One tick. The last gate is the end of scoring, which shows itself.
void advance_gates(GateChimes& gates, double wheel_height_m);

// "500 ft" for two seconds; otherwise the words stay as they are.
void gate_caption(const GateChimes& gates, std::string& words);

}  // namespace slopewise
