// What is asked of the display, the sound, the criteria, the school and the sources.
#include "ui/act.h"

#include <algorithm>

#include "data/school_file.h"
#include "ui/criteria_fields.h"
#include "ui/school_desk.h"
#include "ui/sources_view.h"

namespace slopewise {
void keep_settings(App& app, Host& host) {
    ++app.edition;
    host.save(settings_key, settings_text(app.settings));
}

void act(App& app, const ToggleSound&, Host& host) {
    app.settings.sound = !app.settings.sound;
    keep_settings(app, host);
}
void act(App& app, const SetVolume& wish, Host& host) {
    app.settings.volume = std::clamp(wish.share, 0.0, 1.0);
    keep_settings(app, host);
}
void act(App&, const ToggleFullScreen&, Host& host) { host.toggle_full_screen(); }
void act(App& app, const OpenScreenAndHelp&, Host&) {
    pause(app);
    app.hands.finger_peeks = app.hands.finger_calls_help = false;
    app.after_help = app.screen;
    app.screen = Screen::screen_and_help;
}
void act(App& app, const CloseScreenAndHelp&, Host&) { app.screen = app.after_help; }
void act(App& app, const SetDisplay& wish, Host& host) {
    app.settings.display = wish.display;
    keep_settings(app, host);
}
void act(App& app, const OpenSchool&, Host&) {
    app.school_news.clear();
    app.screen = Screen::school;
}
void act(App& app, const CloseSchool&, Host&) {
    app.school_import.reset();
    app.screen = Screen::screen_and_help;
}
void act(App& app, const ChooseForSchool& wish, Host& host) {
    choose_for_school(app.settings.school, wish.row, wish.choice);
    keep_settings(app, host);
}
void act(App& app, const HandOverSchool&, Host& host) {
    host.offer_file("slopewise-school.json", "application/json", school_text(app.settings.school));
}
void act(App& app, const TakeInSchool&, Host& host) { begin_school_import(app, host); }
void act(App& app, const OpenCriteria&, Host&) { app.screen = Screen::criteria; }
void act(App& app, const CloseCriteria&, Host&) { app.screen = Screen::screen_and_help; }
void act(App& app, const SetCriterion& wish, Host& host) {
    set_criterion(app.settings.school.criteria, wish.field, wish.value);
    keep_settings(app, host);
}
void act(App& app, const ResetCriteria&, Host& host) {
    app.settings.school.criteria = {};
    keep_settings(app, host);
}
void act(App& app, const OpenSources&, Host&) {
    if (!has_sources(app.screen)) return;
    app.after_sources = app.screen;
    app.source_topic = 0;
    app.screen = Screen::sources;
}
void act(App& app, const CloseSources&, Host&) { app.screen = app.after_sources; }
void act(App& app, const ChooseSourceTopic& wish, Host&) { app.source_topic = wish.topic; }

}  // namespace slopewise
