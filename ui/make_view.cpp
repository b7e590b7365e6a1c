#include "ui/make_view.h"

#include "ui/app.h"
#include "ui/criteria_fields.h"
#include "ui/estimate_view.h"
#include "ui/logbook_views.h"
#include "ui/mirror.h"
#include "ui/replay_view.h"
#include "ui/take_away.h"
#include "ui/views.h"

namespace slopewise {
namespace {

const std::vector<std::string> cautions{
    "Ground study aid. Not an approved training device: time may not be logged or credited.",
    "Not for use in flight. The airfields and the aircraft are invented.",
    "Your flight manual, your instructor and the local rules come first.",
};

SoundView sound_view(const FlightView& flight, const Settings& settings) {
    const InstrumentsView& shown = flight.instruments;
    return {settings.sound && !flight.paused, shown.power_percent / 100.0, shown.airspeed_kt,
            shown.stall_warning};
}

}  // namespace

void make_view(const App& app, View& view) {
    view.caution = cautions;
    view.version = SLOPEWISE_VERSION;
    view.display = app.settings.display;
    view.notice = app.notice;
    view.sound = {};
    switch (app.screen) {
    case Screen::choices:
        view.choice = choice_view(app.choice, chosen_scenario(app));
        view.choice.student = app.settings.student;
        break;
    case Screen::where_and_when:
        view.where_and_when =
            where_and_when_view(app.catalog, app.settings.where_and_when, chosen_scenario(app));
        break;
    case Screen::stick_sense: break;
    case Screen::briefing: view.briefing = briefing_view(chosen_scenario(app), app.settings); break;
    case Screen::flight:
        if (view.edition != app.edition) flight_words(*app.flight, app.settings, view.flight);
        view.edition = app.edition;
        flight_view(*app.flight, app.settings, app.hands.peek(), app.clock.fraction(), view.flight);
        view.sound = sound_view(view.flight, app.settings);
        break;
    case Screen::summary: view.summary = summary_view(*app.flight, app.debrief); break;
    case Screen::estimate:
        view.estimate = estimate_view(*app.flight, app.debrief, app.hands.last_wall_s);
        break;
    case Screen::take_away: view.take_away = take_away_view(app.debrief); break;
    case Screen::criteria: view.criteria = criteria_view(app.settings.criteria); break;
    case Screen::screen_and_help:
        view.screen_and_help = screen_and_help_view(app.settings, app.after_help == Screen::flight);
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
        progress_view(app.logbook, app.catalog, app.settings.student, app.logbook_choice, view.progress);
        break;
    }
    make_mirror(app.screen, view, view.mirror);
}

View make_view(const App& app) {
    View view;
    make_view(app, view);
    return view;
}

}  // namespace slopewise
