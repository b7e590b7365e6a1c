#include "review/decision.h"

namespace slopewise {

Decision decision_at(const Criteria& criteria, const GateValue& gate, const Stability& stability, End end,
                     double end_s) {
    if (!gate.reached) return Decision::none;
    const bool around = end == End::went_around && end_s <= gate.time_s + criteria.decision_s;
    if (stability.stable()) return around ? Decision::cautious : Decision::right;
    return around ? Decision::right : Decision::miss;
}

}  // namespace slopewise
