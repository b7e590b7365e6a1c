#include "ui/drive_class.h"

#include <cmath>

#include "ui/app.h"
#include "ui/drive_asking.h"
#include "ui/drive_drills.h"
#include "ui/drive_station.h"
#include "ui/ink_lines.h"
#include "ui/keep_attempts.h"
#include "ui/recorded_flight.h"

namespace slopewise {

bool put_class_flight(App& app, const Lesson& lesson) {
    Scenario scenario = scenario_of(app.catalog, as_told(lesson));
    scenario.lesson.hands = Hands::both;  // who flies what, the station says; nothing waits for an answer
    if (!scenario.start_trim.flyable) return false;
    HelpPlan plan;
    plan.unaided_run = true;  // what helps a class, its instructor shows
    app.flight = begin_session(std::move(scenario), app.settings.school.criteria, plan);
    app.flight->paused = true;
    app.hands =
        PilotHands{app.flight->scenario.start_trim.controls, 0.0, 0.0, false, false, app.hands.last_wall_s};
    app.room.freeze_at_tick.reset();
    wipe_ink(app.room.shown);
    ++app.room.flights;
    begin_station_flight(app);
    ++app.edition;
    return true;
}

void open_class_room(App& app, Host& host) {
    if (app.room.open) return;
    leave_attempt(app, host);
    drop_drill_flight(app);
    app.room.behind = app.screen;
    app.room.shown = {};
    app.room.station = {};
    begin_asking(app);
    if (!put_class_flight(app, lesson_of(ApproachChoice{}, drill_base(app).lesson))) {
        app.notice =
            "This aeroplane cannot be flown here. Choose another under \"Where and when\", then teach.";
        return;
    }
    app.room.open = true;
    app.screen = Screen::class_room;
}

void close_class_room(App& app, Host&) {
    app.room.open = false;
    app.flight.reset();
    app.screen = app.room.behind;
    ++app.edition;
}

bool class_runs(const App& app) {
    return app.screen == Screen::class_room && app.flight && !app.flight->paused &&
           !waits_for_answer(*app.flight);
}

void freeze_or_run(App& app) {
    if (!app.flight || app.flight->attempt.at_rest) return;
    app.flight->paused = !app.flight->paused;
    if (!app.flight->paused) {  // what runs is seen
        app.room.shown.board = {};
        wipe_ink(app.room.shown);
    }
    app.room.freeze_at_tick.reset();
}

void run_class_for(App& app, double seconds) {
    freeze_or_run(app);
    app.flight->paused = false;
    app.room.freeze_at_tick =
        app.flight->attempt.tick + static_cast<std::int64_t>(std::lround(seconds / tick_s));
}

void advance_class(App& app, const Controls& controls, double wall_s) {
    const bool runs = class_runs(app);
    if (runs) watch(*app.flight, app.settings.display, false);
    for (int due = app.clock.due(wall_s, runs); due > 0 && class_runs(app); --due) {
        FlightSession& session = *app.flight;
        const Events events = tick_session(session, asking_controls(app, controls));
        const bool there = app.room.freeze_at_tick && session.attempt.tick >= *app.room.freeze_at_tick;
        // Who goes around is seen to climb away.
        const bool over = events.scoring_ended && session.attempt.end != End::went_around;
        if (!there && !over && !events.came_to_rest) continue;
        session.paused = true;
        app.room.freeze_at_tick.reset();
    }
    if (runs) {
        follow_in_calm(app);
        follow_partner(*app.flight, app.hands.at);
    }
    follow_asking(app);
}

}  // namespace slopewise
