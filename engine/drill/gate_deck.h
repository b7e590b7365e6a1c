// Cards of the call at a gate: a stop at 500 or 300 ft with all its figures; stable or not?
#pragma once

#include <cstdint>
#include <vector>

#include "drill/card.h"
#include "drill/drill.h"
#include "review/stability.h"

namespace slopewise {

inline constexpr int call_stable = 0, call_not_stable = 1;  // the choices, in their order

// The approach to one gate, flown with the controls held from some seconds before it: what the gate was like.
struct GatePassed {
    GateValue gate;
    Stability stability;
    bool flown = false;  // false: the start cannot be flown steadily, or the gate is not met
};
GatePassed pass_gate(const DrillStart& at_gate, double gate_ft, const Scenario& base,
                     const Criteria& criteria);

// The cases in turn, shuffled, each varied a little, at a gate that is drawn. Whether they are stable is
// measured at the gate by the criteria in force, not written in the data. Cases that cannot be flown are
// passed over.
std::vector<Card> gate_deck(const GateCards& settings, int items, const Scenario& base,
                            const Criteria& criteria, std::uint64_t seed);

}  // namespace slopewise
