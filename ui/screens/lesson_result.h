// What a lesson asked for and what was flown, on the summary sheet.
#pragma once

#include "ui/view.h"
#include "ui/widgets/paper.h"

namespace slopewise {

void draw_lesson_result(Column& page, const LessonResultView& result);

}  // namespace slopewise
