// What is asked of the logbook and the progress sheet.
#include "ui/act.h"

#include <optional>

#include "ui/keep_attempts.h"
#include "ui/logbook_desk.h"
#include "ui/logbook_views.h"
#include "ui/student_name.h"

namespace slopewise {
namespace {

void look_at_clock(App& app, Host& host) {
    app.logbook_choice.now_unix_s = host.now_unix_ms() / 1000;
    app.logbook_choice.ahead_of_utc_s = host.ahead_of_utc_s();
    app.logbook_choice.writes_by_finger = host.writes_by_finger();
}

}  // namespace

void act(App& app, const OpenLogbook&, Host& host) {
    look_at_clock(app, host);
    app.ui.logbook = {};
    app.screen = Screen::logbook;
}
void act(App& app, const CloseLogbook&, Host&) {
    if (app.ui.logbook.asks == LogbookUi::Asks::nothing) app.screen = app.home;
    else app.ui.logbook.asks = LogbookUi::Asks::nothing;
}
void act(App& app, const ChooseAttempt& wish, Host&) { app.logbook_choice.attempt = wish.id; }
void act(App& app, const OpenAttempt& wish, Host& host) { open_attempt(app, wish.id, host); }
void act(App& app, const ReplayAttempt& wish, Host& host) { replay_attempt(app, wish.id, host); }
void act(App& app, const CompareAttempts& wish, Host& host) {
    compare_attempts(app, wish.id, wish.other_id, host);
}
void act(App& app, const SaveAttempt& wish, Host& host) { save_attempt(app, wish.id, host); }
void act(App& app, const DeleteAttempt& wish, Host& host) {
    app.logbook_choice.attempt = neighbour_of(app.logbook, app.settings.student, wish.id);
    delete_attempt(app, wish.id, host);
}
void act(App& app, const BringBackAttempt& wish, Host& host) {
    bring_back_attempt(app, wish.id, host);
    app.logbook_choice.attempt = wish.id;
}
void act(App& app, const EraseAttempt& wish, Host& host) { erase_attempt(app, wish.id, host); }
void act(App& app, const ChooseStudent& wish, Host& host) {
    app.logbook_choice.attempt.clear();
    app.logbook_choice.lesson.clear();
    choose_student(app, tidy_student(wish.name), host);
}
void act(App& app, const WriteStudent&, Host& host) {
    const std::optional<std::string> name = host.ask_text("Another name or code:");
    if (name) act(app, ChooseStudent{*name}, host);
}
void act(App& app, const ExportStudent&, Host& host) { export_student(app, host); }
void act(App& app, const ImportFile&, Host& host) { import_file(app, host); }
void act(App& app, const OpenProgress&, Host& host) {
    look_at_clock(app, host);
    app.screen = Screen::progress;
}
void act(App& app, const CloseProgress&, Host&) { app.screen = Screen::logbook; }
void act(App& app, const ChooseProgressLesson& wish, Host&) { app.logbook_choice.lesson = wish.id; }
void act(App& app, const SaveProgress&, Host& host) {
    host.offer_file("slopewise-progress.csv", "text/csv",
                    progress_csv(app.logbook, app.settings.student, app.logbook_choice));
}

}  // namespace slopewise
