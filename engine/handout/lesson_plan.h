// A ground lesson of twenty minutes with this program, minute by minute, on one printed page.
#pragma once

#include <string>

#include "lesson/scenario.h"
#include "review/school.h"

namespace slopewise {

// A self-contained HTML text, one A4 or Letter page, with room for names, notes and initials. `base` as of
// handout_html. It names the buttons and keys of the class's screens, which tests hold to the screens.
std::string lesson_plan_html(const Scenario& base, const School& school);

}  // namespace slopewise
