// What is asked of the lessons, one's own lessons and the drills.
#include "ui/act.h"

#include <algorithm>

#include "ui/drive_drills.h"
#include "ui/lesson_editor_desk.h"

namespace slopewise {

void act(App& app, const OpenLessons&, Host& host) {
    if (app.screen == Screen::summary) act(app, GoToChoices{}, host);  // what was flown is kept
    open_lessons(app);
}
void act(App& app, const CloseLessons&, Host&) { close_lessons(app); }
void act(App& app, const ChooseLesson& wish, Host&) { app.syllabus.chosen = wish.id; }
void act(App& app, const OpenLesson& wish, Host& host) {
    if (app.screen == Screen::summary) act(app, GoToChoices{}, host);  // what was flown is kept
    open_lesson(app, wish.id);
}
void act(App& app, const FlyLesson& wish, Host& host) { brief_lesson(app, wish.id, host); }
void act(App& app, const OpenFirstLesson&, Host&) {
    const auto first = std::ranges::find_if(app.catalog.lessons,
                                            [](const Lesson& lesson) { return lesson.syllabus.place == 1; });
    if (first != app.catalog.lessons.end()) open_lesson(app, first->id);
}
void act(App& app, const FlyNextRun&, Host& host) { brief_next_run(app, host); }
void act(App& app, const OpenOwnLessons&, Host&) { open_own_lessons(app); }
void act(App& app, const CloseOwnLessons&, Host&) { close_own_lessons(app); }
void act(App& app, const SetLessonField& wish, Host& host) { set_draft_field(app, wish, host); }
void act(App& app, const DoWithLesson& wish, Host& host) { do_with_lesson(app, wish, host); }
void act(App& app, const OpenDrills&, Host&) { app.screen = Screen::drills; }
void act(App& app, const CloseDrills&, Host&) { app.screen = app.home; }
void act(App& app, const OpenDrill& wish, Host&) { open_drill(app, wish.id); }
void act(App& app, const BeginDrill&, Host& host) { begin_drill(app, host.random(), host); }
void act(App& app, const AnswerCard& wish, Host&) { answer_card(app, wish.choice); }
void act(App& app, const MovePlaceMark& wish, Host&) { move_place_mark(app, wish); }
void act(App& app, const DoWithDrill& wish, Host& host) { do_with_drill(app, wish.wish, host); }

}  // namespace slopewise
