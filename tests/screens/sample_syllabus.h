// Invented lessons and results, for drawing the sheets of the syllabus without the engine.
#pragma once

#include "ui/view_syllabus.h"

namespace slopewise {

LessonsView sample_lessons();
LessonCardView sample_lesson_card();
LessonResultView sample_lesson_result();

}  // namespace slopewise
