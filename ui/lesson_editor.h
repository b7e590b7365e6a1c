// One's own lessons: those that are kept, the one that is being written, and one that came from somebody
// else.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "data/catalog.h"
#include "lesson/briefing.h"
#include "ui/screens/screens.h"

namespace slopewise {

// A lesson that is being written, and what is wrong with it as it stands.
struct LessonDraft {
    Lesson lesson;
    std::vector<Problem> problems;  // the reader's own, of exactly this lesson
    Briefing briefing;              // its figures, while there are no problems
    std::string begun;              // its text when the writing began
};

// One that came in a link or a file. It waits to be looked at: nothing starts by itself.
struct ArrivedLesson {
    std::string from;  // "a link", "the file gusts.json"
    std::optional<Lesson> lesson;
    std::vector<Problem> problems;  // why there is none
};

struct LessonDesk {
    std::vector<Lesson> own;      // kept, by title
    std::vector<Lesson> deleted;  // until the program is left
    int edition = 0;              // counts the changes of these two
    std::string chosen;           // id
    std::string news, trouble;
    std::optional<LessonDraft> draft;
    std::optional<ArrivedLesson> arrived;
    std::optional<Lesson> flown;               // instead of the approach chosen on the first sheets
    Screen behind_arrived = Screen::choices;   // where leaving what arrived leads
    Screen behind_briefing = Screen::choices;  // where leaving the briefing of `flown` leads
};

inline constexpr std::string_view own_lessons_key = "slopewise-lessons";
inline constexpr std::string_view lesson_draft_key = "slopewise-lesson-draft";

const Lesson* find_own(const LessonDesk& desk, std::string_view id);

// "Four-seat tourer, Larkmoor 27, by day; 3 NM, on the path, calm".
std::string lesson_words(const Catalog& catalog, const Lesson& lesson);

void own_lessons_view(const LessonDesk& desk, const Catalog& catalog, OwnLessonsView& view);
LessonEditorView lesson_editor_view(const LessonDesk& desk, const Catalog& catalog);
ArrivedLessonView arrived_lesson_view(const LessonDesk& desk, const Catalog& catalog);

}  // namespace slopewise
