// What the approach was held to, in words: for the summary and the printed sheet.
#pragma once

#include <string>
#include <vector>

#include "review/criteria.h"

namespace slopewise {

// A sentence for each gate's limits, one for what else the decision gate asks, and one for what counts as a
// path error to answer. No line begins with the words "Held to".
std::vector<std::string> criteria_lines(const Criteria& criteria);

// All of them in one: "Held to: ...".
std::string criteria_sentence(const Criteria& criteria);

}  // namespace slopewise
