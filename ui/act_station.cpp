// What is asked of the station.
#include "ui/act.h"

#include "ui/drive_asking.h"
#include "ui/drive_station.h"
#include "ui/station_rows.h"

namespace slopewise {
namespace {

// Which choices of the same row can be flown from here.
std::string what_can(const App& app, const StationRowWords& row) {
    const Scenario& now = app.flight->scenario;
    const std::vector<std::string> names = station_choices(row, now);
    std::string can;
    for (int choice = 0; choice < choice_count(*row.row, now); ++choice) {
        const Lesson lesson = with_choice(*row.row, choice, now, app.flight->attempt, app.room.station.began);
        if (!scenario_of(app.catalog, lesson).start_trim.flyable) continue;
        can += (can.empty() ? "" : ", ") + names[static_cast<std::size_t>(choice)];
    }
    const std::string label(row.label);
    return can.empty() ? " No choice of \"" + label + "\" can, from here: put it elsewhere first."
                       : " Of \"" + label + "\" can be flown from here: " + can + ".";
}

bool puts_elsewhere(StationRow row) {
    return row == StationRow::distance || row == StationRow::path || row == StationRow::speed ||
           row == StationRow::flap;
}

void choose(App& app, const StationRowWords& row, int choice) {
    StationDesk& desk = app.room.station;
    const Scenario& now = app.flight->scenario;
    const bool elsewhere = puts_elsewhere(*row.row);
    if (!elsewhere && choice_now(*row.row, now, app.flight->attempt) == choice) return;
    const Lesson lesson = with_choice(*row.row, choice, now, app.flight->attempt, desk.began);
    const Start began = desk.began;
    if (!put_and_go_on(app, lesson)) {
        desk.trouble = why_not_flown(app, lesson) + what_can(app, row);
        return;
    }
    if (!elsewhere) desk.began = began;
}

void restore(App& app) {
    StationDesk& desk = app.room.station;
    app.room.shown.lights = true;
    if (app.flight->scenario.lesson.failure_count == 0) return;
    const Lesson lesson = with_nothing_failing(app.flight->scenario, app.flight->attempt, desk.began);
    const Start began = desk.began;
    if (put_and_go_on(app, lesson)) desk.began = began;
    else desk.trouble = why_not_flown(app, lesson) + " Put it elsewhere first.";
}

void grant(App& app, StationWish wish, int choice) {
    StationDesk& desk = app.room.station;
    RoomShown& shown = app.room.shown;
    switch (wish) {
    case StationWish::again: begin_again_at_station(app, choice == 1); break;
    case StationWish::who_has:
        desk.share = static_cast<ControlShare>(choice);
        desk.demonstrator = -1;
        seat_at_station(app);
        break;
    case StationWish::demonstrate:
        desk.demonstrator = choice - 1;
        seat_at_station(app);
        break;
    case StationWish::calm_beside:
        shown.ghost = choice == 1;
        shown.side_profile |= shown.ghost;  // that is where it is seen
        break;
    case StationWish::lights: shown.lights = choice == 0; break;
    case StationWish::restore: restore(app); break;
    }
}

}  // namespace

void act(App& app, const SetStation& wish, Host&) {
    if (!app.room.open || !app.flight) return;
    const auto groups = station_groups();
    const auto group = static_cast<std::size_t>(wish.group), index = static_cast<std::size_t>(wish.row);
    if (group >= groups.size() || index >= groups[group].rows.size()) return;
    const StationRowWords& row = groups[group].rows[index];
    const std::size_t count = station_choices(row, app.flight->scenario).size();
    if (static_cast<std::size_t>(wish.choice) >= count) return;
    app.room.station.trouble.clear();
    // The question was about another approach.
    if (row.row && app.room.shown.ask.stage != AskShown::Stage::none) leave_question(app);
    if (row.row) choose(app, row, wish.choice);
    else grant(app, row.wish, wish.choice);
}

}  // namespace slopewise
