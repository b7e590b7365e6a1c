#include "ui/drive_station.h"

#include "drill/partner.h"
#include "station/station_row.h"
#include "ui/app.h"
#include "ui/drive_class.h"

namespace slopewise {
namespace {

// The other pilot takes the controls as they stand, and the attitude as it is.
ModelPilot taken_over(ModelPilot pilot, const Attempt& attempt) {
    pilot.next_look_s = time_s(attempt);
    if (attempt.tick == 0) return pilot;
    pilot.hands = positions_of(attempt.controls);
    pilot.wanted_pitch_rad = attempt.flight.pitch_rad;
    return pilot;
}

}  // namespace

void seat_at_station(App& app) {
    const StationDesk& desk = app.room.station;
    FlightSession& session = *app.flight;
    follow_partner(session, app.hands.at);  // what the hands take back is where the other pilot left it
    // Nothing is offered and waited for, nor told over the picture: one who teaches says it aloud, and the
    // class window knows nothing of it.
    session.sharing = {};
    const std::uint64_t seed = session.scenario.lesson.seed;
    if (desk.demonstrator >= 0) {
        const auto name = pilot_names[static_cast<std::size_t>(desk.demonstrator)];
        session.sharing.due = session.sharing.control.share = ControlShare::none;
        session.sharing.partner =
            taken_over(pilot_for(session.scenario, *pilot_skill(name), seed), session.attempt);
    } else if (desk.share != ControlShare::both) {
        session.sharing.due = session.sharing.control.share = desk.share;
        session.sharing.partner = taken_over(make_partner(session.scenario, seed), session.attempt);
    }
}

void exchange_at_station(App& app) {
    StationDesk& desk = app.room.station;
    const bool has_all = desk.demonstrator < 0 && desk.share == ControlShare::both;
    desk.demonstrator = -1;
    desk.share = has_all ? ControlShare::none : ControlShare::both;
    seat_at_station(app);
}

void take_all_at_station(App& app) {
    app.room.station.demonstrator = -1;
    app.room.station.share = ControlShare::both;
    seat_at_station(app);
}

bool put_and_go_on(App& app, const Lesson& lesson) {
    const bool ran = class_runs(app);
    if (!put_class_flight(app, lesson)) return false;
    app.flight->paused = !ran;
    return true;
}

std::string why_not_flown(const App& app, const Lesson& lesson) {
    return "That cannot be flown: " + scenario_of(app.catalog, lesson).start_trim.reason + ".";
}

void begin_again_at_station(App& app, bool mirrored) {
    StationDesk& desk = app.room.station;
    const Scenario& now = app.flight->scenario;
    const Lesson lesson = mirrored ? begun_mirrored(now, desk.began) : begun_again(now, desk.began);
    if (!put_and_go_on(app, lesson)) desk.trouble = why_not_flown(app, lesson) + " Put it elsewhere first.";
}

void follow_in_calm(App& app) { catch_up(app.room.station.calm, app.flight->recording); }

void begin_station_flight(App& app) {
    StationDesk& desk = app.room.station;
    desk.began = app.flight->scenario.lesson.start;
    desk.trouble.clear();
    desk.calm = begin_calm_beside(app.flight->scenario);
    seat_at_station(app);
}

}  // namespace slopewise
