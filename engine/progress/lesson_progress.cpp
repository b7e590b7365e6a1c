#include "progress/lesson_progress.h"

#include <algorithm>

#include "lesson/variation.h"

namespace slopewise {
namespace {

int index_of(std::span<const Lesson> lessons, std::string_view id) {
    const auto found = std::ranges::find(lessons, id, &Lesson::id);
    return found == lessons.end() ? -1 : static_cast<int>(found - lessons.begin());
}

int first_in_order(std::span<const Lesson> lessons) {
    int first = -1, place = most_lessons_in_order + 1;
    for (std::size_t i = 0; i < lessons.size(); ++i) {
        if (lessons[i].syllabus.place < 1 || lessons[i].syllabus.place >= place) continue;
        place = lessons[i].syllabus.place;
        first = static_cast<int>(i);
    }
    return first;
}

// When the criterion of a lesson was reached last: so many rows in; 0: not. A drill has no row, and stands at
// the beginning.
std::size_t met_after(const Lesson& lesson, std::span<const AttemptRow> rows, DrillsMet drills) {
    if (!lesson_met(lesson, rows, drills)) return 0;
    std::size_t last = 1;
    for (std::size_t i = 0; i < rows.size(); ++i)
        if (rows[i].lesson == lesson.id && rows[i].unaided) last = i + 2;
    return last;
}

}  // namespace

LessonProgress lesson_progress(const Lesson& lesson, std::span<const AttemptRow> rows) {
    LessonProgress progress;
    std::vector<bool> passed, whole;
    const int last_step = std::max(static_cast<int>(lesson.practice.chain_m.size()) - 1, 0);
    for (const AttemptRow& row : rows) {
        if (row.lesson != lesson.id) continue;
        ++progress.flown;
        if (!row.unaided) continue;
        ++progress.unaided;
        if (progress.chain_step == last_step) whole.push_back(row.criterion_met);
        passed.push_back(row.criterion_met);
        progress.chain_step = chain_step(lesson, passed);
    }
    progress.runs = judge_runs(lesson.success, whole);
    return progress;
}

bool lesson_met(const Lesson& lesson, std::span<const AttemptRow> rows, DrillsMet drills) {
    if (!lesson.syllabus.drill.empty())
        return std::ranges::find(drills, lesson.syllabus.drill) != drills.end();
    return lesson_progress(lesson, rows).runs.reached;
}

int next_lesson(std::span<const Lesson> lessons, std::span<const AttemptRow> rows, DrillsMet drills) {
    int from = -1;
    std::size_t latest = 0;
    for (std::size_t i = 0; i < lessons.size(); ++i) {
        if (lessons[i].syllabus.place < 1) continue;
        const std::size_t met = met_after(lessons[i], rows, drills);
        if (met == 0 || met < latest) continue;
        latest = met;
        from = static_cast<int>(i);
    }
    if (from < 0) return first_in_order(lessons);
    // At most once round, whatever the data says.
    for (std::size_t steps = 0; steps < lessons.size(); ++steps) {
        from = index_of(lessons, lessons[static_cast<std::size_t>(from)].syllabus.next);
        if (from < 0) return -1;
        if (!lesson_met(lessons[static_cast<std::size_t>(from)], rows, drills)) return from;
    }
    return -1;
}

}  // namespace slopewise
