// The sheets of one's own lessons as plain text.
#pragma once

#include <string>

#include "ui/view_lessons.h"

namespace slopewise {

std::string own_lessons_text(const OwnLessonsView& sheet);
std::string lesson_editor_text(const LessonEditorView& sheet);
std::string arrived_lesson_text(const ArrivedLessonView& sheet);

}  // namespace slopewise
