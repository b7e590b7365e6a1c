// Continue or go around: what the gate asked for and what was done.
#pragma once

#include <array>
#include <string_view>

#include "review/stability.h"

namespace slopewise {

// Stable and continued, or unstable and gone around: right. Unstable and continued: a miss. Stable and gone
// around: cautious, which is no fault.
enum class Decision { none, right, miss, cautious };
inline constexpr std::array<std::string_view, 4> decision_names{"none", "right", "miss", "cautious"};

// At the decision gate, if it was reached. Gone around counts when it ends the approach within the time that
// the criteria give.
Decision decision_at(const Criteria& criteria, const GateValue& gate, const Stability& stability, End end,
                     double end_s);

}  // namespace slopewise
