// The failures of a lesson as an instructor sets them: each kind there or not, from the start.
#pragma once

#include "lesson/attempt.h"

namespace slopewise {

// Whether one has happened, or happens at the start; `unit` -1: of any unit.
bool has_failed(const Scenario& scenario, const Attempt& attempt, Failure::Kind kind, int unit = -1);

// Without any of that kind, whenever they would happen.
void remove_failures(Lesson& lesson, Failure::Kind kind);

// One more, from the start. Where a lesson has as many as it can hold, the one listed first gives way.
void add_failure(Lesson& lesson, Failure::Kind kind, double amount = 0.0, int unit = 0);

}  // namespace slopewise
