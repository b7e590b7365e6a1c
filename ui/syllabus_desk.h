// The lessons of the syllabus as they are chosen, begun and gone on with.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "data/catalog.h"
#include "help/path_help.h"
#include "progress/attempt_row.h"
#include "ui/host.h"
#include "ui/screens/screens.h"

namespace slopewise {

struct App;

// One run of a lesson, as its number and the lesson's seed make it. The same for everyone.
struct LessonRun {
    Lesson flown;
    int number = 1;          // of this student, by the logbook
    bool kept_back = false;  // how it begins is for the student to find out, and told afterwards
};

struct SyllabusDesk {
    std::string chosen;            // in the list
    std::string card;              // the lesson whose card is open
    std::optional<LessonRun> run;  // briefed or flown
};

// The run of a lesson after these attempts of one student (the oldest first): its set-up and what varies, and
// how far back it begins where it is learned from the end backwards.
LessonRun run_of(const Catalog& catalog, const Lesson& lesson, std::span<const AttemptRow> rows);

// "Run 5, seed 1: start 0.7° high, headwind 8 kt." While it is kept back, not how it begins.
std::string run_words(const Lesson& lesson, const LessonRun& run, bool told);

// The path help in a run of a lesson: by the results in this lesson, from the stage that it begins with.
HelpPlan help_plan_of(const Lesson& lesson, std::span<const AttemptRow> rows);

// Ids of the drills whose criteria the student has met, once at least.
std::vector<std::string> drills_met(const App& app);

// Whether nobody has an attempt in the logbook, deleted ones too, or has done a drill.
bool is_newcomer(const App& app);

void open_lessons(App& app);
void close_lessons(App& app);
void open_lesson(App& app, const std::string& id);
void brief_lesson(App& app, const std::string& id, Host& host);
void brief_next_run(App& app, Host& host);  // of the lesson just flown
void fly_now(App& app, Host& host);         // the approach chosen, with no briefing

}  // namespace slopewise
