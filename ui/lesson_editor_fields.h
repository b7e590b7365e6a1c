// A lesson as rows of fields with units, ranges and steps, for whoever writes one.
#pragma once

#include "data/catalog.h"
#include "ui/view_lessons.h"

namespace slopewise {

// Every field that this lesson has to offer, with the problems that are of it; the others go to `problems` of
// the view.
void lesson_fields(const Lesson& lesson, const std::vector<Problem>& problems, const Catalog& catalog,
                   LessonEditorView& view);

// Sets the field of that number: an amount in its unit, taken to the nearest that is allowed, or words. A
// number that is none changes nothing. Another aircraft brings its own speeds, flap and mass.
void set_lesson_field(Lesson& lesson, int field, double amount, const std::string& words,
                      const Catalog& catalog);

}  // namespace slopewise
