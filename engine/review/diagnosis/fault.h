// The student errors that data can show, each as an instructor puts it: symptom, cause, what it could lead
// to, correction. One of them is the priority; its weight says how much safety hangs on it.
#pragma once

#include <string_view>
#include <vector>

#include "review/diagnosis/evidence.h"

namespace slopewise {

struct Fault {
    std::string_view id;     // "ducking_under": for files
    std::string_view title;  // "Ducking under"
    std::string_view symptom, cause, could_lead_to, correction;
    int safety_weight = 0;  // 1 to 100
    // Its card already tells to go around, so that a miss at the gate is told with it, not before it.
    bool tells_of_going_around = false;
    Evidence (*detect)(const Approach& approach) = nullptr;
};

// By safety weight, the greatest first. The weights are our ranking (common practice, no source): what can
// end in the ground or a stall stands before what only scatters.
const std::vector<Fault>& faults();

// Null when there is none of that id.
const Fault* find_fault(std::string_view id);

}  // namespace slopewise
