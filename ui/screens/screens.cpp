#include "ui/screens/screens.h"

#include "ui/theme.h"
#include "ui/widgets/controls.h"

namespace slopewise {
namespace {

// A key that answered one sheet, or flew, is often still down when the next sheet comes: its repeats were
// never meant for that sheet's buttons.
void leave_keys_behind(Screen screen, const View& view, UiState& ui) {
    const bool paused = screen == Screen::flight && view.flight.paused;
    if (screen != ui.drawn && ui.drawn == Screen::keys) let_keys_move_focus(true);
    if (screen != ui.drawn) hide_focus();  // so that Enter is the next step, whatever was focused before
    if (screen != ui.drawn || paused != ui.drawn_paused) keep_held_keys_from_focus();
    ui.drawn = screen;
    ui.drawn_paused = paused;
}

}  // namespace

Actions draw_screen(Screen screen, const View& view, UiState& ui) {
    const bool just_opened = screen != ui.drawn;
    leave_keys_behind(screen, view, ui);
    ui.pads.areas = {};  // the flight says anew where they are
    wear_look(view.display.look, view.display.projector_text);
    switch (screen) {
    case Screen::choices: return draw_choices(view);
    case Screen::stick_sense: return draw_stick_sense(view);
    case Screen::briefing: return draw_briefing(view);
    case Screen::flight: return draw_flight(view, ui);
    case Screen::summary: return draw_summary(view);
    case Screen::screen_and_help: return draw_screen_and_help(view);
    case Screen::where_and_when: return draw_where_and_when(view);
    case Screen::estimate: return draw_estimate(view);
    case Screen::take_away: return draw_take_away(view);
    case Screen::criteria: return draw_criteria(view);
    case Screen::school: return draw_school(view);
    case Screen::replay: return draw_replay(view);
    case Screen::logbook: return draw_logbook(view, ui.logbook);
    case Screen::progress: return draw_progress(view);
    case Screen::sources: return draw_sources(view, just_opened);
    case Screen::own_lessons: return draw_own_lessons(view, ui.lessons);
    case Screen::lesson_editor: return draw_lesson_editor(view, ui.lessons);
    case Screen::arrived_lesson: return draw_arrived_lesson(view);
    case Screen::drills: return draw_drills(view);
    case Screen::drill: return draw_drill(view);
    case Screen::drill_result: return draw_drill_result(view);
    case Screen::welcome: return draw_welcome(view);
    case Screen::lessons: return draw_lessons(view, ui);
    case Screen::lesson_card: return draw_lesson_card(view);
    case Screen::class_room: return draw_class_room(view, ui);
    case Screen::class_window: return draw_class_window(view);
    case Screen::class_table: return draw_class_table(view, just_opened);
    case Screen::keys: return draw_keys(view);
    case Screen::controllers: return draw_controllers(view);
    case Screen::about: return draw_about(view);
    }
    return {};
}

}  // namespace slopewise
