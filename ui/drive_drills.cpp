#include "ui/drive_drills.h"

#include <algorithm>

#include "lesson/where_and_when.h"
#include "ui/drill_desk.h"
#include "ui/keep_attempts.h"

namespace slopewise {
namespace {

using Wish = DoWithDrill::Wish;

const Drill* open_one(const App& app) { return find_drill(app.catalog, app.drills.id); }

// The newest is kept whatever becomes of the oldest.
void keep_result(App& app, const DrillResult& result, Host& host) {
    DrillDesk& desk = app.drills;
    desk.kept.push_back({app.settings.student, result});
    const std::string text = drill_log_text(desk.kept);
    const std::size_t lines = static_cast<std::size_t>(std::ranges::count(text, '\n'));
    desk.kept.erase(desk.kept.begin(), desk.kept.end() - static_cast<std::ptrdiff_t>(lines));
    host.save(drill_results_key, text);
    ++desk.edition;
}

void show_result(App& app, DrillResult result, Host& host) {
    if (result.finished) keep_result(app, result, host);
    app.drills.result = std::move(result);
    app.drills.cards.reset();
    drop_drill_flight(app);
    app.screen = Screen::drill_result;
}

void begin_flown_drill(App& app, FlownDrill flown) {
    HelpPlan plan;
    plan.unaided_run = true;  // a drill measures what is done without help
    app.flight = begin_session(flown.scenario, app.settings.school.criteria, plan);
    app.hands = PilotHands{flown.scenario.start_trim.controls, 0.0, 0.0, false, false, app.hands.last_wall_s};
    app.ui = UiState{};
    const bool tells = kind_of(flown.drill) == DrillKind::student_tells;
    app.drills.flown = std::move(flown);
    app.screen = tells ? Screen::drill : Screen::flight;
    ++app.edition;
}

void leave_drill(App& app) {
    app.drills.cards.reset();
    app.drills.result.reset();
    drop_drill_flight(app);
    app.screen = app.drills.behind;
}

void go_on(App& app, Host& host) {
    DrillDesk& desk = app.drills;
    if (desk.cards) {
        if (!go_on(*desk.cards)) show_result(app, result_of(desk.cards->quiz), host);
        ++app.edition;
    } else if (app.screen == Screen::drill && !desk.flown) {
        begin_drill(app, host.random(), host);
    }
}

}  // namespace

std::vector<DrillResult> results_of(const DrillDesk& desk, const std::string& student) {
    std::vector<DrillResult> results;
    for (const KeptDrillResult& one : desk.kept)
        if (one.student == student) results.push_back(one.result);
    return results;
}

void open_drill_desk(App& app, Host& host) {
    const std::string text = host.load(drill_results_key);
    DrillLog log = read_drill_log(text);
    app.drills.kept = std::move(log.kept);
    if (log.problems.empty()) return;
    host.save(damaged_drill_results_key, text);
    app.drills.trouble = "A kept drill result cannot be read (" + to_text(log.problems.front()) +
                         "). The others are kept; the whole text was put aside.";
}

Scenario drill_base(const App& app) {
    WhereAndWhen there = app.settings.where_and_when;
    there.outlook = {};
    const Lesson lesson = lesson_of(ApproachChoice{}, *base_lesson(app.catalog));
    return scenario_of(app.catalog, lesson_at(lesson, there, *find_aircraft(app.catalog, there.aircraft_id)));
}

void open_drill(App& app, const std::string& id) {
    if (find_drill(app.catalog, id) == nullptr) return;
    DrillDesk& desk = app.drills;
    if (app.screen != Screen::drill && app.screen != Screen::drill_result) desk.behind = app.screen;
    desk.id = id;
    desk.cards.reset();
    desk.result.reset();
    desk.trouble.clear();
    drop_drill_flight(app);
    app.screen = Screen::drill;
}

void begin_drill(App& app, std::uint64_t seed, Host& host) {
    const Drill* drill = open_one(app);
    if (drill == nullptr) return;
    DrillDesk& desk = app.drills;
    drop_drill_flight(app);
    desk.cards.reset();
    desk.result.reset();
    desk.trouble.clear();
    app.screen = Screen::drill;
    const Scenario base = drill_base(app);
    if (is_flown(*drill)) {
        leave_attempt(app, host);
        FlownDrill flown = begin_flown(*drill, base, seed);
        if (flown.scenario.start_trim.flyable) return begin_flown_drill(app, std::move(flown));
    } else {
        desk.cards = begin_cards(*drill, base, app.settings.school.criteria, seed);
        ++app.edition;
        if (desk.cards) return;
    }
    desk.trouble =
        "This drill cannot be flown with this aeroplane here. Choose another under \"Where and "
        "when\".";
}

void answer_card(App& app, int choice) {
    DrillDesk& desk = app.drills;
    if (desk.cards) return choose_answer(*desk.cards, choice);
    if (desk.flown && app.screen == Screen::drill && choice >= 0 &&
        choice < static_cast<int>(command_words.size()))
        tell(*desk.flown, app.flight->attempt, static_cast<Command>(choice));
}

void move_place_mark(App& app, const MovePlaceMark& wish) {
    if (!app.drills.cards) return;
    CardSession& cards = *app.drills.cards;
    move_mark(cards, wish.onwards ? cards.mark_m + wish.metres : wish.metres);
}

void do_with_drill(App& app, Wish wish, Host& host) {
    const std::uint64_t seed = app.drills.result ? app.drills.result->seed : 0;
    switch (wish) {
    case Wish::go_on: return go_on(app, host);
    case Wish::mark_moment:
        if (app.drills.cards) mark_moment(*app.drills.cards);
        return;
    case Wish::again: return begin_drill(app, seed, host);
    case Wish::again_anew: return begin_drill(app, host.random(), host);
    case Wish::leave: return leave_drill(app);
    }
}

void drop_drill_flight(App& app) {
    if (!app.drills.flown) return;
    app.drills.flown.reset();
    app.flight.reset();
    ++app.edition;
}

void advance_drill_flight(App& app, const Controls& controls, double wall_s, Host& host) {
    FlightSession& session = *app.flight;
    FlownDrill& flown = *app.drills.flown;
    const bool runs = !session.paused && (app.screen == Screen::flight || app.screen == Screen::drill);
    if (runs) watch(session, app.settings.display, app.hands.peek(), false);
    for (int due = app.clock.due(wall_s, runs); due > 0; --due) {
        tick_session(session, flown_controls(flown, session.attempt, controls));
        advance_flown(flown, session.attempt);
        if (!is_finished(flown, session.attempt)) continue;
        return show_result(app, result_of(flown, session.track, session.attempt, session.criteria), host);
    }
}

}  // namespace slopewise
