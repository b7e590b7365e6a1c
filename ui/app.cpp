#include "ui/app.h"

#include "review/track_csv.h"
#include "ui/criteria_fields.h"
#include "ui/estimate_view.h"
#include "ui/keep_attempts.h"
#include "ui/logbook_desk.h"
#include "ui/logbook_events.h"
#include "ui/logbook_views.h"
#include "ui/make_view.h"
#include "ui/open_replay.h"
#include "ui/student_name.h"
#include "ui/take_away.h"
#include "ui/views.h"

namespace slopewise {
namespace {

bool flying(const App& app) { return app.screen == Screen::flight && app.flight && !app.flight->paused; }

void begin_flight(App& app, Scenario scenario, Host& host) {
    leave_attempt(app, host);
    app.flight = begin_session(std::move(scenario), app.settings.criteria);
    begin_keeping(app, host);
    app.debrief = debrief_of(app);
    app.hands =
        Hands{app.flight->scenario.start_trim.controls, 0.0, 0.0, false, false, app.hands.last_wall_s};
    app.ui = UiState{};
    app.screen = Screen::flight;
    ++app.edition;
}

void pause(App& app) {
    if (flying(app)) app.flight->paused = true;
    if (app.replay) app.replay->playing = false;
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

void advance_flight(App& app, const Controls& controls, double wall_s, Host& host) {
    if (flying(app)) watch(*app.flight, app.settings.display, app.hands.peek());
    for (int due = app.clock.due(wall_s, flying(app)); due > 0; --due) {
        const Events events = tick_session(*app.flight, controls);
        if (events.scoring_ended || events.came_to_rest) {
            // The student says how it was before the sheet does; flown on, that has been asked.
            app.screen = events.scoring_ended ? Screen::estimate : Screen::summary;
            app.debrief.questions_from_s = wall_s + blank_s;
            if (!events.scoring_ended) review_session(*app.flight);
            return keep_attempt(app, host);
        }
    }
    if (flying(app)) keep_up(app, host);
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
    void operator()(const StartFlight&) { begin_flight(app, chosen_scenario(app), host); }
    void operator()(const TogglePause&) {
        if (app.flight && app.screen == Screen::flight) app.flight->paused = !app.flight->paused;
    }
    void operator()(const RestartSame&) {
        if (app.flight) begin_flight(app, Scenario(app.flight->scenario), host);
    }
    void operator()(const RestartMirrored&) {
        if (!app.flight) return;
        app.choice.side = mirrored(app.choice.side);
        begin_flight(app, chosen_scenario(app), host);
    }
    void operator()(const FlyOn&) {
        if (app.flight && !app.flight->attempt.at_rest) {
            app.flight->paused = false;
            app.hands.finger_peeks = false;
            app.screen = Screen::flight;
        }
    }
    void operator()(const OpenSummary&) {
        if (!app.flight || !app.flight->reviewed) return;
        review_session(*app.flight);
        app.screen = Screen::summary;
    }
    void operator()(const GoToChoices&) {
        leave_attempt(app, host);
        const bool was_looked_at = app.screen == Screen::summary && app.flight->from_logbook;
        app.screen = was_looked_at ? Screen::logbook : Screen::choices;
    }
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
    void operator()(const OpenReplay&) {
        if (app.flight) open_replay(app, app.flight->recording, &app.flight->track);
    }
    void operator()(const CloseReplay&) { close_replay(app); }
    void operator()(const DriveReplay& wish) {
        if (app.replay) drive(*app.replay, wish);
    }
    void operator()(const TouchPanel& wish) { app.hands.finger_peeks = wish.held; }

    void operator()(const AnswerEstimate& wish) {
        if (app.screen == Screen::estimate && app.hands.last_wall_s >= app.debrief.questions_from_s &&
            answer_estimate(wish.question, wish.answer, *app.flight, app.debrief)) {
            app.screen = Screen::summary;
            keep_attempt(app, host);
        }
    }
    void operator()(const SkipEstimate&) { app.screen = Screen::summary; }
    void operator()(const ShowDetail&) { app.debrief.detail_asked = true; }
    void operator()(const OpenTakeAway&) { app.screen = Screen::take_away; }
    void operator()(const CloseTakeAway&) { app.screen = Screen::summary; }
    void operator()(const TakeAway& wish) {
        const File file = file_to_take(*app.flight, wish.index);
        host.offer_file(file.name, file.media_type, file.text);
        app.debrief.handed_over = file.name;
    }
    void operator()(const OpenCriteria&) { app.screen = Screen::criteria; }
    void operator()(const CloseCriteria&) { app.screen = Screen::screen_and_help; }
    void operator()(const SetCriterion& wish) {
        set_criterion(app.settings.criteria, wish.field, wish.value);
        keep_settings();
    }
    void operator()(const ResetCriteria&) {
        app.settings.criteria = {};
        keep_settings();
    }

    // The logbook and the progress sheet.
    void look_at_clock() {
        app.logbook_choice.now_unix_s = host.now_unix_ms() / 1000;
        app.logbook_choice.ahead_of_utc_s = host.ahead_of_utc_s();
        app.logbook_choice.writes_by_finger = host.writes_by_finger();
    }
    void operator()(const OpenLogbook&) {
        look_at_clock();
        app.ui.logbook = {};
        app.screen = Screen::logbook;
    }
    void operator()(const CloseLogbook&) {
        if (app.ui.logbook.asks == LogbookUi::Asks::nothing) app.screen = Screen::choices;
        else app.ui.logbook.asks = LogbookUi::Asks::nothing;
    }
    void operator()(const ChooseAttempt& wish) { app.logbook_choice.attempt = wish.id; }
    void operator()(const OpenAttempt& wish) { open_attempt(app, wish.id, host); }
    void operator()(const ReplayAttempt& wish) { replay_attempt(app, wish.id, host); }
    void operator()(const CompareAttempts& wish) { compare_attempts(app, wish.id, wish.other_id, host); }
    void operator()(const SaveAttempt& wish) { save_attempt(app, wish.id, host); }
    void operator()(const DeleteAttempt& wish) {
        app.logbook_choice.attempt = neighbour_of(app.logbook, app.settings.student, wish.id);
        delete_attempt(app, wish.id, host);
    }
    void operator()(const BringBackAttempt& wish) {
        bring_back_attempt(app, wish.id, host);
        app.logbook_choice.attempt = wish.id;
    }
    void operator()(const EraseAttempt& wish) { erase_attempt(app, wish.id, host); }
    void operator()(const ChooseStudent& wish) {
        app.logbook_choice.attempt.clear();
        app.logbook_choice.lesson.clear();
        choose_student(app, tidy_student(wish.name), host);
    }
    void operator()(const WriteStudent&) {
        const std::optional<std::string> name = host.ask_text("Another name or code:");
        if (name) (*this)(ChooseStudent{*name});
    }
    void operator()(const ExportStudent&) { export_student(app, host); }
    void operator()(const ImportFile&) { import_file(app, host); }
    void operator()(const OpenProgress&) {
        look_at_clock();
        app.screen = Screen::progress;
    }
    void operator()(const CloseProgress&) { app.screen = Screen::logbook; }
    void operator()(const ChooseProgressLesson& wish) { app.logbook_choice.lesson = wish.id; }
    void operator()(const SaveProgress&) {
        host.offer_file("slopewise-progress.csv", "text/csv",
                        progress_csv(app.logbook, app.settings.student, app.logbook_choice));
    }
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
    host.logbook().open();
    return app;
}

void apply(App& app, const Action& action, Host& host) { std::visit(Apply{app, host}, action); }

void frame(App& app, const RawInput& raw, Host& host) {
    take_host_events(app, host.take_events());
    take_logbook_events(app, host);
    const double passed_s = raw.wall_s - app.hands.last_wall_s;
    const Wishes wishes = read_wishes(app, raw);
    for (const Action& action : wishes.actions) apply(app, action, host);
    advance_flight(app, quantize(wishes.controls), raw.wall_s, host);
    if (app.screen == Screen::replay) advance_replay(*app.replay, passed_s);
    make_view(app, app.view);
    const View& view = app.view;
    const Actions actions = draw_screen(app.screen, view, app.ui);
    for (const Action& action : actions) apply(app, action, host);
    host.play(view.sound);
    show_mirror(app, view.mirror, host);
}

}  // namespace slopewise
