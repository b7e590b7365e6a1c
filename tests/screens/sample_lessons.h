// Invented lessons of one's own, for drawing their sheets without the engine.
#pragma once

#include "ui/view_lessons.h"

namespace slopewise {

OwnLessonsView sample_own_lessons(int count);
LessonEditorView sample_lesson_editor();
ArrivedLessonView sample_arrived_lesson();

}  // namespace slopewise
