// A lesson back into JSON, in the form that read_lesson reads.
#pragma once

#include <string>

#include "lesson/lesson.h"

namespace slopewise {

// Reading the text gives the same lesson, bit for bit, as long as its values came from pilot units (those of
// a file or a choice do).
std::string lesson_text(const Lesson& lesson);

}  // namespace slopewise
