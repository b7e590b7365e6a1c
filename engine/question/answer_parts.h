// What the answers are worked out from.
#pragma once

#include "question/answer.h"
#include "review/gate_value.h"

namespace slopewise {

// What is wrong with the lights of the picture now, for one who may have to trust them; empty when nothing
// is.
std::string light_fault_words(const Scenario& scenario, const Attempt& attempt);

// The gate that the approach stands at: the criteria's decision gate when it was passed within the window of
// a gate's means, else its present height. With less than that flown, or not descending, it has no trends.
GateValue gate_now(const FlownSoFar& flown);

// Whether the call at this gate would be another with every limit a tenth tighter, or a tenth wider.
bool is_near_a_limit(const FlownSoFar& flown, const GateValue& gate);

// What is seen to answer first when the question's control is moved now.
struct FirstSeen {
    int what = 2;  // 0 the airspeed, 1 the sink, 2 neither within the time
    double after_s = 2.0 * answers_within_s, next_after_s = 2.0 * answers_within_s;
    double speed_mps = 0.0, sink_mps = 0.0;  // the greatest changes within the time
};
FirstSeen first_seen(const Question& question, const FlownSoFar& flown);

}  // namespace slopewise
