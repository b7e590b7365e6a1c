// The handout of a class: the numbers of the school's aircraft and speeds on one printed page.
#pragma once

#include <string>

#include "lesson/scenario.h"
#include "review/school.h"

namespace slopewise {

// A self-contained HTML text, one A4 or Letter page. `base`: the aircraft and the airfield, by day in calm
// air. It must be flyable (Scenario::start_trim).
std::string handout_html(const Scenario& base, const School& school);

}  // namespace slopewise
