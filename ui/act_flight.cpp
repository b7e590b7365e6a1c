// What is asked for around and in a flight.
#include "ui/act.h"

#include <optional>
#include <utility>

#include "help/help_stage.h"
#include "ui/drive_drills.h"
#include "ui/drive_station.h"
#include "ui/keep_attempts.h"
#include "ui/lesson_editor_desk.h"
#include "ui/logbook_views.h"

namespace slopewise {
namespace {

void begin_flight(App& app, Scenario scenario, Host& host) {
    drop_drill_flight(app);
    leave_attempt(app, host);
    app.room.open = false;
    const std::vector<AttemptRow> rows = trend_rows(app.logbook, app.settings.student);
    const bool is_lesson = scenario.lesson.syllabus.place > 0;
    const HelpPlan plan = is_lesson ? help_plan_of(scenario.lesson, rows) : help_plan(rows, false);
    app.flight = begin_session(std::move(scenario), app.settings.school.criteria, plan);
    begin_keeping(app, host);
    app.debrief = debrief_of(app);
    app.hands =
        PilotHands{app.flight->scenario.start_trim.controls, 0.0, 0.0, false, false, app.hands.last_wall_s};
    app.ui = UiState{};
    app.screen = Screen::flight;
    ++app.edition;
}

}  // namespace

void act(App& app, const StartFlight&, Host& host) { begin_flight(app, chosen_scenario(app), host); }
void act(App& app, const TogglePause&, Host&) {
    if (app.flight && (app.screen == Screen::flight || app.drills.flown))
        app.flight->paused = !app.flight->paused;
}
void act(App& app, const RestartSame&, Host& host) {
    if (app.room.open) return begin_again_at_station(app, false);
    if (app.drills.flown) return begin_drill(app, std::uint64_t{app.drills.flown->seed}, host);
    if (app.flight) begin_flight(app, Scenario(app.flight->scenario), host);
}
void act(App& app, const RestartMirrored&, Host& host) {
    if (app.room.open) return begin_again_at_station(app, true);
    if (!app.flight || app.drills.flown) return;
    const Lesson& flown = app.flight->scenario.lesson;
    if (flown.id != base_lesson(app.catalog)->id) {
        if (const std::optional<Lesson> other = mirrored_lesson(app.catalog, flown))
            begin_flight(app, scenario_of(app.catalog, *other), host);
        return;
    }
    app.choice.side = mirrored(app.choice.side);
    begin_flight(app, chosen_scenario(app), host);
}
void act(App& app, const FlyOn&, Host&) {
    if (app.flight && !app.flight->attempt.at_rest) {
        app.flight->paused = false;
        app.hands.finger_peeks = app.hands.finger_calls_help = false;
        app.screen = Screen::flight;
    }
}
void act(App& app, const GoAround&, Host&) {
    if (app.room.open) take_all_at_station(app);
    if (app.flight && app.screen == Screen::flight) take_all_controls(*app.flight);
    app.hands.held_so = {};
    app.hands.at.throttle = 1.0;
    app.hands.at.go_around = true;
}
void act(App& app, const MoveStick& wish, Host&) {
    app.hands.mouse_has_stick = wish.stick != 0.0;
    if (wish.stick != 0.0) app.hands.at.stick = wish.stick;
    if (wish.stick != 0.0) mark(app.hands.used, wish.by_thumb ? Device::thumb_pads : Device::mouse);
}
void act(App& app, const SetThrottle& wish, Host&) {
    app.hands.at.throttle = wish.fraction;
    mark(app.hands.used, wish.by_thumb ? Device::thumb_pads : Device::mouse);
}
void act(App& app, const SetFlap& wish, Host&) {
    app.hands.at.flap = wish.index;
    mark(app.hands.used, Device::mouse);
}
void act(App& app, const SetTrim& wish, Host&) {
    app.hands.at.trim = wish.trim;
    mark(app.hands.used, Device::mouse);
}
void act(App& app, const TouchPanel& wish, Host&) { app.hands.finger_peeks = wish.held; }
void act(App& app, const CallHelp& wish, Host&) { app.hands.finger_calls_help = wish.held; }
void act(App& app, const ExchangeControls&, Host&) {
    if (app.room.open) return exchange_at_station(app);
    if (!app.flight || app.screen != Screen::flight || app.flight->paused || app.drills.flown) return;
    exchange_controls(*app.flight);
}

}  // namespace slopewise
