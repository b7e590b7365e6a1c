#include "ui/syllabus_desk.h"

#include <algorithm>

#include "help/help_stage.h"
#include "lesson/briefing.h"
#include "lesson/variation.h"
#include "progress/lesson_progress.h"
#include "ui/app.h"

namespace slopewise {
namespace {

std::vector<AttemptRow> rows_of_lesson(std::span<const AttemptRow> rows, const std::string& id) {
    std::vector<AttemptRow> of_it;
    std::ranges::copy_if(rows, std::back_inserter(of_it),
                         [&](const AttemptRow& row) { return row.lesson == id; });
    return of_it;
}

bool can_be_flown(const Catalog& catalog, const Lesson& lesson) {
    return check_lesson(catalog, lesson, lesson.id).empty() &&
           make_briefing(scenario_of(catalog, lesson)).flyable;
}

}  // namespace

LessonRun run_of(const Catalog& catalog, const Lesson& lesson, std::span<const AttemptRow> rows) {
    const LessonProgress progress = lesson_progress(lesson, rows);
    const Lesson from_here = at_chain_step(lesson, progress.chain_step);
    LessonRun run{varied(from_here, progress.flown + 1, lesson.seed), progress.flown + 1,
                  !lesson.practice.set_ups.empty()};
    // A school's aeroplane may not fly every start that ours does.
    if (!can_be_flown(catalog, run.flown)) run.flown = from_here;
    return run;
}

std::string run_words(const Lesson& lesson, const LessonRun& run, bool told) {
    const std::string words =
        "Run " + std::to_string(run.number) + ", seed " + std::to_string(lesson.seed) + ": ";
    if (run.kept_back && !told)
        return words + "one of " + std::to_string(lesson.practice.set_ups.size()) +
               " ways to begin; which one is told afterwards.";
    return words + variation_words(lesson, run.flown) + ".";
}

HelpPlan help_plan_of(const Lesson& lesson, std::span<const AttemptRow> rows) {
    const std::vector<AttemptRow> of_it = rows_of_lesson(rows, lesson.id);
    const int stage = std::max(help_stage(of_it), lesson.aids.help_stage);
    return {false, stage, is_unaided_run(of_it.size(), stage)};
}

std::vector<std::string> drills_met(const App& app) {
    std::vector<std::string> ids;
    for (const DrillResult& result : results_of(app.drills, app.settings.student))
        if (result.passed()) ids.push_back(result.drill_id);
    return ids;
}

bool is_newcomer(const App& app) {
    return app.drills.kept.empty() && app.logbook.rows.empty() && app.logbook.without_row.empty() &&
           !app.flight;
}

void open_lessons(App& app) {
    SyllabusDesk& desk = app.syllabus;
    const int next =
        next_lesson(app.catalog.lessons, trend_rows(app.logbook, app.settings.student), drills_met(app));
    if (find_lesson(app.catalog, desk.chosen) == nullptr && next >= 0)
        desk.chosen = app.catalog.lessons[static_cast<std::size_t>(next)].id;
    app.screen = Screen::lessons;
}

void close_lessons(App& app) { app.screen = app.home; }

void open_lesson(App& app, const std::string& id) {
    if (find_lesson(app.catalog, id) == nullptr) return;
    app.syllabus.chosen = app.syllabus.card = id;
    app.screen = Screen::lesson_card;
}

void brief_lesson(App& app, const std::string& id, Host& host) {
    const Lesson* lesson = find_lesson(app.catalog, id);
    if (lesson == nullptr || !lesson->syllabus.drill.empty()) return;
    SyllabusDesk& desk = app.syllabus;
    desk.chosen = desk.card = id;
    desk.run = run_of(app.catalog, *lesson, trend_rows(app.logbook, app.settings.student));
    app.lessons.flown = desk.run->flown;
    app.lessons.behind_briefing = Screen::lesson_card;
    apply(app, OpenBriefing{}, host);
}

void brief_next_run(App& app, Host& host) {
    if (!app.flight) return;
    const std::string id = app.flight->scenario.lesson.id;
    const Lesson* lesson = find_lesson(app.catalog, id);
    if (lesson == nullptr || lesson->syllabus.place < 1) return;
    apply(app, GoToChoices{}, host);  // what was flown is kept, and counts
    brief_lesson(app, id, host);
}

void fly_now(App& app, Host& host) {
    app.syllabus.run.reset();
    app.lessons.flown.reset();
    if (!make_briefing(chosen_scenario(app)).flyable) return apply(app, GoToChoices{}, host);  // it says why
    if (app.settings.up_key_pushes) return apply(app, StartFlight{}, host);
    app.after_question = Screen::flight;
    app.screen = Screen::stick_sense;
}

}  // namespace slopewise
