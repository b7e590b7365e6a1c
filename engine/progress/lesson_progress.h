// What is known of a student's attempts at the lessons of the syllabus, and which lesson comes next. Facts
// alone: nothing is locked, and nobody is ranked.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "lesson/lesson.h"
#include "progress/attempt_row.h"
#include "success/judge.h"

namespace slopewise {

struct LessonProgress {
    int flown = 0, unaided = 0;  // attempts of it that came to their end
    JudgedRuns runs;             // of the unaided ones, by what the lesson asks for
    int chain_step = 0;          // that is due where it is learned from the end backwards; 0: the nearest
};

// `rows`: attempts of one student, the oldest first; those of other lessons are passed over. In a lesson that
// is learned from the end backwards only runs of the whole of it count for its criterion.
LessonProgress lesson_progress(const Lesson& lesson, std::span<const AttemptRow> rows);

// The criterion that a drill stands for, by its id: true once it is met.
using DrillsMet = std::span<const std::string>;

bool lesson_met(const Lesson& lesson, std::span<const AttemptRow> rows, DrillsMet drills);

// Index of the lesson to go on with: `next` is followed from the lesson that was met last, past those that
// are met already; the first in the order where none is; -1 when the order is at its end. `lessons` by their
// place.
int next_lesson(std::span<const Lesson> lessons, std::span<const AttemptRow> rows, DrillsMet drills);

}  // namespace slopewise
