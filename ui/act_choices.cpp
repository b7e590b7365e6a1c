// What the first sheets ask for: where, when, how, and the way to the flight.
#include "ui/act.h"

#include "ui/drive_drills.h"
#include "ui/keep_attempts.h"
#include "ui/lesson_editor_desk.h"
#include "ui/views.h"

namespace slopewise {

void act(App& app, const ChooseDistance& wish, Host&) { app.choice.distance_nm = wish.distance_nm; }
void act(App& app, const ChoosePosition& wish, Host&) {
    app.choice.side = static_cast<StartSide>(wish.index);
}
void act(App& app, const ChooseHeadwind& wish, Host&) { app.choice.headwind_kt = wish.headwind_kt; }
void act(App& app, const OpenWhereAndWhen&, Host&) { app.screen = Screen::where_and_when; }
void act(App& app, const CloseWhereAndWhen&, Host&) { app.screen = Screen::choices; }
void act(App& app, const SetWhereAndWhen& wish, Host& host) {
    app.settings.where_and_when = where_and_when(app.catalog, wish.choice);
    keep_settings(app, host);
}
void act(App& app, const AnswerStickSense& wish, Host& host) {
    app.settings.up_key_pushes = wish.up_key_pushes;
    keep_settings(app, host);
    if (app.after_question == Screen::flight) return act(app, StartFlight{}, host);
    app.screen = app.after_question;
}
void act(App& app, const AskStickSense&, Host&) {
    app.after_question = app.screen == Screen::briefing ? Screen::briefing : Screen::choices;
    app.screen = Screen::stick_sense;
}
void act(App& app, const OpenFirstPage&, Host&) { app.screen = Screen::welcome; }
void act(App& app, const OpenBriefing&, Host&) {
    app.screen = Screen::briefing;
    if (app.settings.up_key_pushes) return;
    app.after_question = Screen::briefing;
    app.screen = Screen::stick_sense;
}
void act(App& app, const GoToChoices&, Host& host) {
    if (app.drills.flown) return do_with_drill(app, DoWithDrill::Wish::leave, host);
    if (app.screen == Screen::briefing && app.lessons.flown) return leave_lesson_briefing(app);
    app.lessons.flown.reset();
    app.syllabus.run.reset();
    leave_attempt(app, host);
    const bool was_looked_at = app.screen == Screen::summary && app.flight->from_logbook;
    app.screen = was_looked_at ? Screen::logbook : Screen::choices;
}
void act(App& app, const FlyNow&, Host& host) { fly_now(app, host); }

}  // namespace slopewise
