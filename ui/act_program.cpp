// What is asked of the program itself.
#include "ui/act.h"

namespace slopewise {
namespace {

// Flown now, or paused with the way back leading into it.
bool flight_in_progress(const App& app) {
    const bool flown = app.flight && !app.flight->reviewed && !app.flight->from_logbook;
    if (!flown) return app.room.open;
    const Screen under = app.screen == Screen::about ? app.after_about : app.screen;
    const Screen back = under == Screen::screen_and_help ? app.after_help : under;
    return app.room.open || app.drills.flown || back == Screen::flight;
}

// The program begins anew with it, so never while somebody flies or a class runs.
void take_update(App& app, Host& host) {
    if (!app.program.update_waits) return;
    if (flight_in_progress(app)) app.program.news = "The newer version waits until the flight is over.";
    else host.take_update();
}

}  // namespace

void act(App& app, const OpenAbout&, Host& host) {
    app.program.where = host.kept_where();
    app.program.asks_to_erase = false;
    app.program.news.clear();
    app.after_about = app.screen;
    app.screen = Screen::about;
}
void act(App& app, const CloseAbout&, Host&) {
    app.program.asks_to_erase = false;
    app.screen = app.after_about;
}
void act(App& app, const DoWithProgram& wish, Host& host) {
    using Wish = DoWithProgram::Wish;
    ProgramDesk& desk = app.program;
    switch (wish.wish) {
    case Wish::take_update: return take_update(app, host);
    case Wish::show_licences:
        if (!host.open_licences()) desk.news = "Here each part's licence lies with its own package.";
        break;
    case Wish::keep_all: desk.asks_to_erase = false; break;
    case Wish::erase_all:
        if (!desk.asks_to_erase) {
            desk.asks_to_erase = true;
            break;
        }
        desk.asks_to_erase = false;
        host.erase_all();
        desk.news = "All of it is erased. The program begins anew.";
        break;
    }
}

}  // namespace slopewise
