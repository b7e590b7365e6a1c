// The list of all lessons: the order of the syllabus in its three groups, and what is known of each.
#include <algorithm>

#include "progress/lesson_progress.h"
#include "ui/syllabus_views.h"

namespace slopewise {
namespace {

constexpr std::array<std::pair<LessonGroup, std::string_view>, 3> groups{
    {{LessonGroup::core, "Before the first landing lesson"},
     {LessonGroup::later, "Later"},
     {LessonGroup::ground_school, "For ground school"}}};

std::string known_words(const Lesson& lesson, std::span<const AttemptRow> rows, DrillsMet drills) {
    if (!lesson.syllabus.drill.empty())
        return lesson_met(lesson, rows, drills) ? "Drill. Criteria met." : "Drill. Criteria not met yet.";
    const LessonProgress progress = lesson_progress(lesson, rows);
    if (progress.flown == 0) return "Not flown yet.";
    return std::to_string(progress.flown) + " flown, " + std::to_string(progress.unaided) + " unaided. " +
           (progress.runs.reached ? "Criterion met: " : "Criterion not met yet: ") +
           std::to_string(progress.runs.met) + " of last " + std::to_string(progress.runs.counted) + ", " +
           std::to_string(lesson.success.passes) + " of " + std::to_string(lesson.success.runs) +
           " asked for.";
}

void make_groups(const App& app, LessonsView& view) {
    const std::vector<AttemptRow> rows = trend_rows(app.logbook, app.settings.student);
    const std::vector<Lesson>& lessons = app.catalog.lessons;
    const std::vector<std::string> drills = drills_met(app);
    const int next = next_lesson(lessons, rows, drills);
    view.groups.clear();
    view.going_on = "Every lesson of the order is met. Any of them can be flown again.";
    if (next >= 0) {
        const Lesson& lesson = lessons[static_cast<std::size_t>(next)];
        view.going_on = "Next: " + std::to_string(lesson.syllabus.place) + ", " + lesson.title + ".";
    }
    for (const auto& [group, title] : groups) {
        view.groups.push_back({std::string(title), {}});
        for (std::size_t i = 0; i < lessons.size(); ++i) {
            const Lesson& lesson = lessons[i];
            if (lesson.syllabus.place < 1 || lesson.syllabus.group != group) continue;
            view.groups.back().rows.push_back({lesson.id, std::to_string(lesson.syllabus.place), lesson.title,
                                               lesson.aim, known_words(lesson, rows, drills),
                                               static_cast<int>(i) == next});
        }
    }
}

}  // namespace

void lessons_view(const App& app, LessonsView& view) {
    const int edition = app.logbook.edition + app.drills.edition;  // both only ever grow
    if (view.made_edition != edition || view.made_student != app.settings.student) make_groups(app, view);
    view.made_edition = edition;
    view.made_student = app.settings.student;
    view.chosen = -1;
    int index = 0;
    for (const LessonsView::Group& group : view.groups) {
        for (const LessonsView::Row& row : group.rows) {
            if (row.id == app.syllabus.chosen) view.chosen = index;
            ++index;
        }
    }
}

}  // namespace slopewise
