#include "ui/app.h"

#include <algorithm>
#include <utility>

#include "ui/act.h"
#include "ui/drive_asking.h"
#include "ui/drive_class.h"
#include "ui/drive_class_link.h"
#include "ui/drive_drills.h"
#include "ui/follow_class.h"
#include "ui/format.h"
#include "ui/keep_attempts.h"
#include "ui/keys_view.h"
#include "ui/lesson_editor_desk.h"
#include "ui/logbook_desk.h"
#include "ui/logbook_events.h"
#include "ui/logbook_views.h"
#include "ui/make_view.h"
#include "ui/school_desk.h"
#include "ui/views.h"

namespace slopewise {

bool flying(const App& app) {
    return app.screen == Screen::flight && app.flight && !app.flight->paused &&
           !waits_for_answer(*app.flight);
}

void pause(App& app) {
    if (flying(app) || app.drills.flown || app.room.open) app.flight->paused = true;
    if (app.drills.cards && app.drills.cards->replay) app.drills.cards->replay->playing = false;
    if (app.replay) app.replay->playing = false;
}

namespace {

void pause_by_itself(App& app, std::string why) {
    const bool flew = flying(app);
    pause(app);
    if (flew) app.flight->why_paused = std::move(why);
}

// "40 s", "7 min", "3 h".
std::string sleep_words(double s) {
    const auto whole = [](double n, const char* unit) { return number_words(n) + unit; };
    return s < 90 ? whole(s, " s") : s < 5400 ? whole(s / 60, " min") : whole(s / 3600, " h");
}

// The seconds since the last frame. While a machine sleeps nobody flies, and nothing is made up for.
double wake(App& app, double wall_s) {
    const double passed_s = wall_s - app.hands.last_wall_s;
    if (passed_s < sleep_from_s || app.hands.last_wall_s == 0.0) return std::max(0.0, passed_s);
    pause_by_itself(app, "This machine stood still for " + sleep_words(passed_s) + ". The flight waited.");
    return 0.0;
}

void take_host_events(App& app, const std::vector<HostEvent>& events) {
    for (const HostEvent event : events) {
        if (event == HostEvent::hidden) pause(app);
        if (event == HostEvent::picture_lost)
            pause_by_itself(app, "The picture was lost. Nothing of the flight is.");
        if (event == HostEvent::storage_failed)
            app.notice = "This browser does not let the page keep settings.";
        if (event == HostEvent::update_waits) app.program.update_waits = true;
    }
}

// Before a class the keys of the hands are heard with those of the instructor.
Wishes read_class_wishes(App& app, const RawInput& raw) {
    PilotHands moved = app.hands;
    read_input(moved, without_class_keys(raw), app.settings, app.flight->scenario.aircraft.flap_count);
    if (class_runs(app)) app.hands = moved;
    else app.hands.held_so = {};
    app.hands.last_wall_s = raw.wall_s;
    Actions actions = read_class_keys(raw, app.settings.keys);
    for (const Action& action : controller_actions(raw.controllers, app.settings.controllers, true))
        actions.push_back(action);
    return {app.hands.at, actions};
}

// Keys and levers reach the flight only while it is flown; in a pause the hands rest where they are.
Wishes read_wishes(App& app, const RawInput& raw) {
    if (app.screen == Screen::class_room) return read_class_wishes(app, raw);
    if (app.screen != Screen::flight) {
        app.hands.last_wall_s = raw.wall_s;
        app.hands.held_so = {};
        if (app.screen == Screen::keys) return {app.hands.at, read_key_sheet(raw, app.keys)};
        return {app.hands.at, read_shortcuts(raw, app.screen)};
    }
    PilotHands moved = app.hands;
    Wishes wishes = read_input(moved, raw, app.settings, app.flight->scenario.aircraft.flap_count);
    if (flying(app)) {
        app.hands = moved;
    } else {
        wishes.controls = app.hands.at;
        app.hands.held_so = {};
    }
    app.hands.last_wall_s = raw.wall_s;
    return wishes;
}

void advance_flight(App& app, const Controls& controls, double wall_s, Host& host) {
    if (flying(app) && app.flight->attempt.end == End::none) app.flight->devices = app.hands.used;
    if (flying(app)) app.flight->why_paused.clear();
    if (flying(app)) watch(*app.flight, app.settings.display, app.hands.peek(), app.hands.calls_for_help());
    int due = app.clock.due(wall_s, flying(app));
    if (app.flight && app.flight->attempt.end == End::none) app.flight->lost_s += app.clock.lost_s();
    for (; due > 0; --due) {
        const Events events = tick_session(*app.flight, controls);
        if (events.scoring_ended || events.came_to_rest) {
            // The student says how it was before the sheet does; flown on, that has been asked.
            app.screen = events.scoring_ended ? Screen::estimate : Screen::summary;
            app.debrief.questions_from_s = wall_s + blank_s;
            if (!events.scoring_ended) review_session(*app.flight);
            return keep_attempt(app, host);
        }
    }
    if (!flying(app)) return;
    follow_partner(*app.flight, app.hands.at);
    keep_up(app, host);
}

// A call-out is made once, however many frames show it.
void speak_call_out(App& app, Host& host) {
    if (!app.flight || app.flight->to_speak == CallOut::none) return;
    const CallOut call = std::exchange(app.flight->to_speak, CallOut::none);
    if (app.settings.sound) host.speak(call_out_words(call, app.flight->criteria.convention));
}

void show_mirror(App& app, const Mirror& mirror, Host& host) {
    if (mirror == app.mirror) return;
    app.mirror.screen.reserve(mirror.screen.capacity());
    app.mirror.instruments.reserve(mirror.instruments.capacity());
    app.mirror = mirror;
    host.show_mirror(mirror.screen, mirror.instruments);
}

// What was kept by another version may name an airfield or an aircraft that this one does not have.
void forget_what_is_gone(App& app) {
    WhereAndWhen& kept = app.settings.where_and_when;
    const auto fall_back = [&](std::string& id, const std::string& usual, bool known) {
        if (known) return;
        app.notice =
            "\"" + id + "\" was kept as where you fly, but is not known here; \"" + usual + "\" is used.";
        id = usual;
    };
    fall_back(kept.runway_id, WhereAndWhen{}.runway_id, find_runway(app.catalog, kept.runway_id) != nullptr);
    fall_back(kept.aircraft_id, WhereAndWhen{}.aircraft_id,
              find_aircraft(app.catalog, kept.aircraft_id) != nullptr);
}

}  // namespace

Scenario chosen_scenario(const App& app) {
    if (app.lessons.flown) return scenario_of(app.catalog, *app.lessons.flown);
    const WhereAndWhen& there = app.settings.where_and_when;
    const Lesson chosen = lesson_of(app.choice, *base_lesson(app.catalog));
    const Lesson there_and_then = lesson_at(chosen, there, *find_aircraft(app.catalog, there.aircraft_id));
    return scenario_of(app.catalog, with_gust_allowance(there_and_then, app.settings.school.gust_share));
}

const Lesson* base_lesson(const Catalog& catalog) { return find_lesson(catalog, "final_calm"); }

App make_app(Catalog catalog, Host& host) {
    App app;
    app.catalog = std::move(catalog);
    app.program.build_id = host.build_id();
    const KeptSettings kept = parse_settings(host.load(settings_key), host.prefers_reduced_motion());
    app.settings = kept.settings;
    if (!put_school_aircraft(app, School{}).empty()) app.settings.school.aircraft.reset();
    if (!kept.problems.empty())
        app.notice = "Kept settings could not be read (" + to_text(kept.problems.front()) +
                     "); for what is bad defaults are used.";
    app.can_fill_screen = host.can_fill_screen();
    forget_what_is_gone(app);
    open_lesson_desk(app, host);
    open_drill_desk(app, host);
    open_ask_desk(app, host);
    // Who was never asked which key lowers the nose has never flown here.
    if (!app.settings.up_key_pushes) app.screen = Screen::welcome;
    begin_class_link(app, host);
    if (app.screen != Screen::class_window) host.logbook().open();
    return app;
}

void apply(App& app, const Action& action, Host& host) {
    if (app.screen == Screen::class_window) return pass_to_instructor(app, action, host);
    if (app.screen == Screen::welcome || app.screen == Screen::choices) app.home = app.screen;
    const auto act_on = [&](const auto& wish) { act(app, wish, host); };
    std::visit([&](const auto& subject) { std::visit(act_on, subject); }, action);
}

void frame(App& app, const RawInput& raw, Host& host) {
    take_host_events(app, host.take_events());
    take_logbook_events(app, host);
    hear_other_window(app, raw.wall_s, host);
    take_in_lesson_texts(app, host);
    const double passed_s = wake(app, raw.wall_s);
    app.hands.fingers = raw.fingers;
    // Who flies with it does not lose the flight with it.
    if (follow_controllers(app.controllers, raw.controllers, app.settings.controllers, raw.wall_s,
                           app.screen == Screen::controllers) &&
        any_controller(app.hands.used))
        pause(app);
    const Wishes wishes = read_wishes(app, raw);
    for (const Action& action : wishes.actions) apply(app, action, host);
    if (app.drills.flown) advance_drill_flight(app, quantize(wishes.controls), raw.wall_s, host);
    else if (app.room.open) advance_class(app, quantize(wishes.controls), raw.wall_s);
    else advance_flight(app, quantize(wishes.controls), raw.wall_s, host);
    if (app.screen == Screen::drill && app.drills.cards) advance_cards(*app.drills.cards, passed_s);
    if (app.screen == Screen::replay) advance_replay(*app.replay, passed_s);
    make_view(app, app.view);
    const View& view = app.view;
    const Actions actions = draw_screen(app.screen, view, app.ui);
    for (const Action& action : actions) apply(app, action, host);
    tell_class_window(app, raw.wall_s, host);
    host.play(view.sound);
    speak_call_out(app, host);
    show_mirror(app, view.mirror, host);
}

}  // namespace slopewise
