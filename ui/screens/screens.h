// Every screen of the program: a function from what it shows (and its own small ui state) to actions.
#pragma once

#include "ui/action.h"
#include "ui/screens/lesson_editor_ui.h"
#include "ui/screens/logbook_ui.h"
#include "ui/screens/thumb_pads_ui.h"
#include "ui/view.h"

namespace slopewise {

enum class Screen {
    choices,
    stick_sense,
    briefing,
    flight,
    summary,
    screen_and_help,
    where_and_when,
    estimate,
    take_away,
    criteria,
    school,
    replay,
    logbook,
    progress,
    sources,
    own_lessons,
    lesson_editor,
    arrived_lesson,
    drills,
    drill,
    drill_result,
    welcome,
    lessons,
    lesson_card,
    class_room,
    class_window,
    class_table,
    keys,
    controllers,
    about
};

// What a screen remembers between frames that is nobody else's business.
struct UiState {
    bool dragging_stick = false;
    double drag_origin_y = 0;        // pixels
    bool looking = false;            // paused with the sheet put away, to talk about the picture
    Screen drawn = Screen::choices;  // in the last frame
    bool drawn_paused = false;
    ThumbPadsUi pads;
    LogbookUi logbook;
    LessonEditorUi lessons;
    int lesson_shown = -1;  // that was chosen in the last frame, among those of the syllabus
};

Actions draw_choices(const View& view);
Actions draw_stick_sense(const View& view);
Actions draw_briefing(const View& view);
Actions draw_flight(const View& view, UiState& ui);
Actions draw_summary(const View& view);
Actions draw_where_and_when(const View& view);
Actions draw_screen_and_help(const View& view);
Actions draw_estimate(const View& view);
Actions draw_take_away(const View& view);
Actions draw_criteria(const View& view);
Actions draw_school(const View& view);
Actions draw_replay(const View& view);
Actions draw_logbook(const View& view, LogbookUi& ui);
Actions draw_progress(const View& view);
Actions draw_sources(const View& view, bool just_opened);
Actions draw_own_lessons(const View& view, LessonEditorUi& ui);
Actions draw_lesson_editor(const View& view, LessonEditorUi& ui);
Actions draw_arrived_lesson(const View& view);
Actions draw_drills(const View& view);
Actions draw_drill(const View& view);
Actions draw_drill_result(const View& view);
Actions draw_welcome(const View& view);
Actions draw_lessons(const View& view, UiState& ui);
Actions draw_lesson_card(const View& view);
Actions draw_class_room(const View& view, UiState& ui);
Actions draw_class_window(const View& view);
Actions draw_class_table(const View& view, bool just_opened);
Actions draw_keys(const View& view);
Actions draw_controllers(const View& view);
Actions draw_about(const View& view);

// Draws the screen named, over the whole window.
Actions draw_screen(Screen screen, const View& view, UiState& ui);

}  // namespace slopewise
