// What is said about a lesson, where it stands in the syllabus, and which aids it shows.
#pragma once

#include "data/fields.h"
#include "lesson/lesson.h"

namespace slopewise {

Syllabus read_syllabus(Fields fields);
Teaching read_teaching(Fields fields);
LessonAids read_aids(Fields fields);

}  // namespace slopewise
