#include "ui/app.h"

#include "review/track_csv.h"
#include "ui/make_view.h"
#include "ui/views.h"

namespace slopewise {
namespace {

bool flying(const App& app) { return app.screen == Screen::flight && app.flight && !app.flight->paused; }

void begin_flight(App& app, Scenario scenario) {
    app.flight = begin_session(std::move(scenario));
    app.hands =
        Hands{app.flight->scenario.start_trim.controls, 0.0, 0.0, false, false, app.hands.last_wall_s};
    app.ui = UiState{};
    app.screen = Screen::flight;
    ++app.edition;
}

void pause(App& app) {
    if (flying(app)) app.flight->paused = true;
}

void take_host_events(App& app, const std::vector<HostEvent>& events) {
    for (const HostEvent event : events) {
        if (event == HostEvent::hidden) pause(app);
        if (event == HostEvent::storage_failed)
            app.notice = "This browser does not let the page keep settings.";
    }
}

// Keys and levers reach the flight only while it is flown; in a pause the hands rest where they are.
Wishes read_wishes(App& app, const RawInput& raw) {
    if (app.screen != Screen::flight) {
        app.hands.last_wall_s = raw.wall_s;
        return {app.hands.at, read_shortcuts(raw, app.screen)};
    }
    Hands moved = app.hands;
    Wishes wishes = read_input(moved, raw, app.settings, app.flight->scenario.aircraft.flap_count);
    if (flying(app)) app.hands = moved;
    else wishes.controls = app.hands.at;
    app.hands.last_wall_s = raw.wall_s;
    return wishes;
}

void advance_flight(App& app, const Controls& controls, double wall_s) {
    if (flying(app)) watch(*app.flight, app.settings.display, app.hands.peek());
    for (int due = app.clock.due(wall_s, flying(app)); due > 0; --due) {
        const Events events = tick_session(*app.flight, controls);
        if (events.scoring_ended || events.came_to_rest) {
            app.screen = Screen::summary;
            return;
        }
    }
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

struct Apply {
    App& app;
    Host& host;

    void keep_settings() {
        ++app.edition;
        host.save(settings_key, settings_text(app.settings));
    }

    void operator()(const ChooseDistance& wish) { app.choice.distance_nm = wish.distance_nm; }
    void operator()(const ChoosePosition& wish) { app.choice.side = static_cast<StartSide>(wish.index); }
    void operator()(const ChooseHeadwind& wish) { app.choice.headwind_kt = wish.headwind_kt; }
    void operator()(const OpenWhereAndWhen&) { app.screen = Screen::where_and_when; }
    void operator()(const CloseWhereAndWhen&) { app.screen = Screen::choices; }
    void operator()(const SetWhereAndWhen& wish) {
        app.settings.where_and_when = where_and_when(app.catalog, wish.choice);
        keep_settings();
    }
    void operator()(const AnswerStickSense& wish) {
        app.settings.up_key_pushes = wish.up_key_pushes;
        keep_settings();
        app.screen = app.after_question;
    }
    void operator()(const AskStickSense&) {
        app.after_question = app.screen == Screen::briefing ? Screen::briefing : Screen::choices;
        app.screen = Screen::stick_sense;
    }
    void operator()(const OpenBriefing&) {
        app.screen = Screen::briefing;
        if (app.settings.up_key_pushes) return;
        app.after_question = Screen::briefing;
        app.screen = Screen::stick_sense;
    }
    void operator()(const StartFlight&) { begin_flight(app, chosen_scenario(app)); }
    void operator()(const TogglePause&) {
        if (app.flight && app.screen == Screen::flight) app.flight->paused = !app.flight->paused;
    }
    void operator()(const RestartSame&) {
        if (app.flight) begin_flight(app, Scenario(app.flight->scenario));
    }
    void operator()(const RestartMirrored&) {
        if (!app.flight) return;
        app.choice.side = mirrored(app.choice.side);
        begin_flight(app, chosen_scenario(app));
    }
    void operator()(const FlyOn&) {
        if (app.flight && !app.flight->attempt.at_rest) {
            app.flight->paused = false;
            app.hands.finger_peeks = false;
            app.screen = Screen::flight;
        }
    }
    void operator()(const OpenSummary&) {
        if (app.flight && app.flight->summary) app.screen = Screen::summary;
    }
    void operator()(const GoToChoices&) { app.screen = Screen::choices; }
    void operator()(const GoAround&) {
        app.hands.at.throttle = 1.0;
        app.hands.at.go_around = true;
    }
    void operator()(const MoveStick& wish) {
        app.hands.mouse_has_stick = wish.stick != 0.0;
        if (wish.stick != 0.0) app.hands.at.stick = wish.stick;
    }
    void operator()(const SetThrottle& wish) { app.hands.at.throttle = wish.fraction; }
    void operator()(const SetFlap& wish) { app.hands.at.flap = wish.index; }
    void operator()(const SetTrim& wish) { app.hands.at.trim = wish.trim; }
    void operator()(const ToggleSound&) {
        app.settings.sound = !app.settings.sound;
        keep_settings();
    }
    void operator()(const SaveTrack&) {
        if (app.flight) host.offer_file("slopewise-track.csv", "text/csv", track_csv(app.flight->track));
    }
    void operator()(const OpenScreenAndHelp&) {
        pause(app);
        app.hands.finger_peeks = false;
        app.after_help = app.screen == Screen::flight ? Screen::flight : Screen::choices;
        app.screen = Screen::screen_and_help;
    }
    void operator()(const CloseScreenAndHelp&) { app.screen = app.after_help; }
    void operator()(const SetDisplay& wish) {
        app.settings.display = wish.display;
        keep_settings();
    }
    void operator()(const TouchPanel& wish) { app.hands.finger_peeks = wish.held; }
};

}  // namespace

Scenario chosen_scenario(const App& app) {
    const WhereAndWhen& there = app.settings.where_and_when;
    const Lesson lesson = lesson_of(app.choice, *base_lesson(app.catalog));
    return scenario_of(app.catalog, lesson_at(lesson, there, *find_aircraft(app.catalog, there.aircraft_id)));
}

const Lesson* base_lesson(const Catalog& catalog) { return find_lesson(catalog, "final_calm"); }

App make_app(Catalog catalog, Host& host) {
    App app;
    app.catalog = std::move(catalog);
    const KeptSettings kept = parse_settings(host.load(settings_key), host.prefers_reduced_motion());
    app.settings = kept.settings;
    if (!kept.problems.empty())
        app.notice = "Kept settings could not be read (" + to_text(kept.problems.front()) +
                     "); for what is bad defaults are used.";
    forget_what_is_gone(app);
    return app;
}

void apply(App& app, const Action& action, Host& host) { std::visit(Apply{app, host}, action); }

void frame(App& app, const RawInput& raw, Host& host) {
    take_host_events(app, host.take_events());
    const Wishes wishes = read_wishes(app, raw);
    for (const Action& action : wishes.actions) apply(app, action, host);
    advance_flight(app, quantize(wishes.controls), raw.wall_s);
    make_view(app, app.view);
    const View& view = app.view;
    const Actions actions = draw_screen(app.screen, view, app.ui);
    for (const Action& action : actions) apply(app, action, host);
    host.play(view.sound);
    show_mirror(app, view.mirror, host);
}

}  // namespace slopewise
