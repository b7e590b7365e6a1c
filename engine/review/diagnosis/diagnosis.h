// What was wrong with an approach: ONE priority, the others by name, nothing where the evidence is thin.
#pragma once

#include <vector>

#include "review/diagnosis/fault.h"

namespace slopewise {

struct Finding {
    const Fault* fault = nullptr;
    Evidence evidence;
};

// The first is the priority: the greatest safety weight, but for a miss at the gate that another fault found
// already tells to go around for; such a miss stands last (the decision table tells of it in any case). With
// the miss always first, of 200 faulty model pilots each the one who sets flap late had his own fault put
// first 0 times, who ignores the wind 53 and who stretches 134 times, since all of them press on; as it is,
// 200 each. What the student has to mend is why the gate was unstable, and those cards say to go around as
// well.
struct Diagnosis {
    std::vector<Finding> findings;

    const Finding* priority() const { return findings.empty() ? nullptr : &findings.front(); }
    bool finds(std::string_view id) const;
};

Diagnosis diagnose(const Approach& approach);

}  // namespace slopewise
