#include "ui/make_view.h"

#include <algorithm>

#include "drill/evidence.h"
#include "ui/about_view.h"
#include "ui/app.h"
#include "ui/class_table_view.h"
#include "ui/class_views.h"
#include "ui/controllers_view.h"
#include "ui/criteria_fields.h"
#include "ui/drill_views.h"
#include "ui/drive_class_link.h"
#include "ui/estimate_view.h"
#include "ui/format.h"
#include "ui/keys_view.h"
#include "ui/logbook_views.h"
#include "ui/mirror.h"
#include "ui/pads_view.h"
#include "ui/replay_view.h"
#include "ui/school_desk.h"
#include "ui/sound_view.h"
#include "ui/sources_view.h"
#include "ui/stick_question.h"
#include "ui/syllabus_views.h"
#include "ui/take_away.h"
#include "ui/views.h"

namespace slopewise {
namespace {

const std::vector<std::string> cautions{
    "Ground study aid. Not an approved training device: time may not be logged or credited.",
    "Not for use in flight. The airfields and the aircraft are invented.",
    "Your flight manual, your instructor and the local rules come first.",
};

// What the flight says when it has nothing more pressing to say.
void quiet_captions(const App& app, FlightView& flight) {
    const FlightSession& session = *app.flight;
    if (session.paused && !session.why_paused.empty()) flight.caption = session.why_paused;
    if (!flight.caption.empty() || session.paused) return;
    gate_caption(session.gates, flight.caption);
    if (!flight.caption.empty() || !app.clock.slow()) return;
    flight.caption.append("This machine is too slow: time runs at ");
    flight.caption.append(number_words(std::max(0.1, app.clock.share()), 1));
}

}  // namespace

void make_view(const App& app, View& view) {
    view.caution = cautions;
    view.version = SLOPEWISE_VERSION;
    if (!app.program.build_id.empty()) view.version.append(", build ").append(app.program.build_id);
    view.about.update_waits = app.program.update_waits;
    view.display = app.settings.display;
    view.notice = app.notice;
    view.sound = {};
    switch (app.screen) {
    case Screen::choices:
        view.choice = choice_view(app.choice, chosen_scenario(app));
        view.choice.student = app.settings.student;
        break;
    case Screen::where_and_when:
        view.where_and_when = where_and_when_view(app.catalog, app.settings.where_and_when,
                                                  chosen_scenario(app), app.settings.school.runway_unit);
        break;
    case Screen::stick_sense:
        view.stick_question = stick_question_view(app.settings.keys.thumb_pads && app.hands.fingers.ever);
        break;
    case Screen::briefing:
        view.briefing = briefing_view(briefed_scenario(app), app.settings);
        view.briefing.run = briefed_run_words(app);
        if (app.lessons.flown) view.briefing.back = "Back";
        break;
    case Screen::flight:
        if (view.edition != app.edition) flight_words(*app.flight, app.settings, view.flight);
        view.edition = app.edition;
        flight_view(*app.flight, app.settings.display, app.hands.peek(), app.clock.fraction(), view.flight);
        tell_what_is_held(app, view.flight);
        view.display = shown_display(*app.flight, app.settings.display);
        flown_drill_view(app, view.flight);
        pads_view(app, view.flight.pads);
        quiet_captions(app, view.flight);
        view.sound = sound_view(*app.flight, view.flight.instruments.stall_warning, app.settings);
        break;
    case Screen::summary:
        view.summary = summary_view(*app.flight, app.debrief);
        view.summary.lesson = lesson_result_view(*app.flight, app.debrief, app.catalog);
        break;
    case Screen::estimate:
        view.estimate = estimate_view(*app.flight, app.debrief, app.hands.last_wall_s);
        break;
    case Screen::take_away: view.take_away = take_away_view(app.debrief); break;
    case Screen::school: view.school = school_view(app); break;
    case Screen::criteria: view.criteria = criteria_view(app.settings.school.criteria); break;
    case Screen::screen_and_help:
        view.screen_and_help = screen_and_help_view(app.settings, app.after_help == Screen::flight);
        view.screen_and_help.can_fill_screen = app.can_fill_screen;
        view.sound = chosen_sound(app.settings);
        break;
    case Screen::replay:
        if (view.edition != app.edition) replay_words(*app.replay, app.settings, view);
        view.edition = app.edition;
        replay_view(*app.replay, app.settings, view);
        break;
    case Screen::logbook:
        logbook_view(app.logbook, app.catalog, app.settings.student, app.logbook_choice, view.logbook);
        break;
    case Screen::progress:
        progress_view(app.logbook, app.catalog, app.settings.student, app.logbook_choice, view.progress,
                      {evidence_of(results_of(app.drills, app.settings.student)), app.drills.edition});
        break;
    case Screen::sources:
        view.sources = sources_view(app.after_sources, app.source_topic, app.catalog);
        break;
    case Screen::own_lessons: own_lessons_view(app.lessons, app.catalog, view.own_lessons); break;
    case Screen::lesson_editor: view.lesson_editor = lesson_editor_view(app.lessons, app.catalog); break;
    case Screen::welcome: view.choice.student = app.settings.student; break;
    case Screen::class_room:
        class_picture_view(app, view);
        class_room_view(app, view);
        break;
    case Screen::class_window:
        class_picture_view(app, view);
        class_window_view(app, view);
        break;
    case Screen::class_table: class_table_view(app, view.class_table); break;
    case Screen::keys: keys_view(app, view.keys); break;
    case Screen::controllers: controllers_view(app, view.controllers); break;
    case Screen::about: about_view(app, view.about); break;
    case Screen::lessons: lessons_view(app, view.lessons); break;
    case Screen::lesson_card: view.lesson_card = lesson_card_view(app); break;
    case Screen::arrived_lesson: view.arrived_lesson = arrived_lesson_view(app.lessons, app.catalog); break;
    case Screen::drills: drills_view(app, view.drills); break;
    case Screen::drill: drill_view(app, view); break;
    case Screen::drill_result: view.drill_result = drill_result_view(app); break;
    }
    make_mirror(app.screen, view, view.mirror);
}

View make_view(const App& app) {
    View view;
    make_view(app, view);
    return view;
}

}  // namespace slopewise
