// The sheets of the syllabus as plain text.
#pragma once

#include <string>

#include "ui/view.h"

namespace slopewise {

std::string welcome_text(const View& view);
std::string lessons_text(const LessonsView& sheet);
std::string lesson_card_text(const LessonCardView& card);

// Empty where the flight was none of a lesson.
std::string lesson_result_text(const LessonResultView& result);

}  // namespace slopewise
