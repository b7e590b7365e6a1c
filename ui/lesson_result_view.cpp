// What a flight was to its lesson: each thing asked for with what was flown, and how many runs met it all.
#include "lesson/variation.h"
#include "progress/lesson_progress.h"
#include "ui/syllabus_views.h"

namespace slopewise {
namespace {

LessonResultView::Row result_row(const JudgedRequirement& judged) {
    return {requirement_words(judged.requirement), judged.figure,
            std::string(verdict_words[static_cast<std::size_t>(judged.verdict)]),
            judged.verdict == Verdict::met, judged.verdict == Verdict::not_met};
}

bool varies_by_run(const Practice& practice) {
    return practice.vary_start || practice.vary_wind || !practice.runways.empty() ||
           !practice.set_ups.empty() || !practice.chain_m.empty();
}

}  // namespace

LessonResultView lesson_result_view(const FlightSession& session, const DebriefState& state,
                                    const Catalog& catalog) {
    LessonResultView view;
    const ReviewedFlight& flight = *session.reviewed;
    const Lesson& flown = flight.scenario.lesson;
    const Lesson* lesson = find_lesson(catalog, flown.id);
    if (lesson == nullptr || lesson->syllabus.place < 1) return view;
    view.title = "Lesson " + std::to_string(lesson->syllabus.place) + ": " + lesson->title;
    const JudgedFlight judged = judge_flight(flight.scenario, flight.criteria, flight.track, flight.review);
    for (const JudgedRequirement& one : judged.requirements) view.rows.push_back(result_row(one));

    std::vector<AttemptRow> rows = state.earlier_rows;
    rows.push_back(attempt_row(flight, session.recording.circumstances));
    const LessonProgress progress = lesson_progress(*lesson, rows);
    view.runs = runs_judged_words(lesson->success, progress.runs);
    if (!rows.back().unaided) view.runs += " This run was aided and is not counted.";
    view.reached = progress.runs.reached;
    view.varies = varies_by_run(lesson->practice);
    const LessonRun run{flown, state.earlier_runs + 1, !lesson->practice.set_ups.empty()};
    view.variation = run_words(*lesson, run, true);
    view.next_id = lesson->syllabus.next;
    return view;
}

Scenario briefed_scenario(const App& app) {
    const std::optional<LessonRun>& run = app.syllabus.run;
    if (!run || !run->kept_back || !app.lessons.flown) return chosen_scenario(app);
    const Lesson* lesson = find_lesson(app.catalog, run->flown.id);
    return lesson == nullptr ? chosen_scenario(app) : scenario_of(app.catalog, *lesson);
}

std::string briefed_run_words(const App& app) {
    const std::optional<LessonRun>& run = app.syllabus.run;
    if (!run || !app.lessons.flown || run->flown.id != app.lessons.flown->id) return {};
    const Lesson* lesson = find_lesson(app.catalog, run->flown.id);
    return lesson == nullptr ? "" : run_words(*lesson, *run, false);
}

}  // namespace slopewise
