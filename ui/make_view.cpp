#include "ui/make_view.h"

#include "ui/app.h"
#include "ui/mirror.h"
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
    case Screen::choices: view.choice = choice_view(app.choice, chosen_scenario(app)); break;
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
    case Screen::summary: view.summary = summary_view(*app.flight); break;
    case Screen::screen_and_help:
        view.screen_and_help = screen_and_help_view(app.settings, app.after_help == Screen::flight);
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
