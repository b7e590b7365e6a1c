// Reads what a lesson lets happen: turbulence, discrete gusts and shear, failures.
#pragma once

#include "data/fields.h"
#include "lesson/lesson.h"
#include "world/lights.h"

namespace slopewise {

// The "air" object: turbulence, its seed, events. May be left out of a lesson: smooth air.
void read_air(Fields fields, Lesson& lesson);

// One failure, and the "failures" list.
Failure read_failure(Fields fields);
void read_failures(Fields& fields, Lesson& lesson);

}  // namespace slopewise
