// What is done with one's own lessons.
#pragma once

#include "ui/app.h"

namespace slopewise {

// Reads what is kept. What cannot be read is told, and the whole text kept under another key before anything
// is written over it.
void open_lesson_desk(App& app, Host& host);

void open_own_lessons(App& app);
void close_own_lessons(App& app);  // of the sheets about them: to the one before
void set_draft_field(App& app, const SetLessonField& wish, Host& host);
void do_with_lesson(App& app, const DoWithLesson& wish, Host& host);

// A lesson from a link or a file: checked, and laid before the user. What is flown waits.
void take_in_lesson_texts(App& app, Host& host);

// Back from the briefing of one of these lessons.
void leave_lesson_briefing(App& app);

// The lesson begun as far off the path on the other side, when that can be flown.
std::optional<Lesson> mirrored_lesson(const Catalog& catalog, const Lesson& lesson);

}  // namespace slopewise
