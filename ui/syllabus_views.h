// The sheets of the syllabus, made from the catalog, the logbook's rows and what was flown.
#pragma once

#include "ui/app.h"
#include "ui/view_syllabus.h"

namespace slopewise {

// Written over what the view held; its rows are made again only when the logbook or the drills changed.
void lessons_view(const App& app, LessonsView& view);

LessonCardView lesson_card_view(const App& app);

// `session` is reviewed.
LessonResultView lesson_result_view(const FlightSession& session, const DebriefState& state,
                                    const Catalog& catalog);

// What the briefing tells of: the flight that comes; of a run whose beginning is kept back, the lesson.
Scenario briefed_scenario(const App& app);
std::string briefed_run_words(const App& app);

}  // namespace slopewise
