// The instructor's station, through the program: every change one press, who flies, and the calm air beside.
#include <algorithm>
#include <string>

#include "base/units.h"
#include "tests/check.h"
#include "tests/ui/test_host.h"
#include "ui/app.h"
#include "ui/drive_class.h"
#include "ui/drive_station.h"
#include "ui/input.h"
#include "ui/make_view.h"
#include "ui/station_rows.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

bool has(const std::string& text, std::string_view words) { return text.find(words) != std::string::npos; }

// A class, its station open, and someone at the keys.
struct Class {
    TestHost host;
    App app = make_app(shipped(), host);
    double wall_s = 100.0;

    Class() {
        apply(app, OpenClassRoom{}, host);
        apply(app, ChooseClassPanel{static_cast<int>(ClassRoomView::Panel::station)}, host);
        advance_class(app, {}, wall_s);
    }

    // By the words on the panel, as a hand finds it.
    void press(std::string_view label, std::string_view choice) {
        const auto groups = station_groups();
        for (std::size_t i = 0; i < groups.size(); ++i) {
            for (std::size_t j = 0; j < groups[i].rows.size(); ++j) {
                if (groups[i].rows[j].label != label) continue;
                const std::vector<std::string> names =
                    station_choices(groups[i].rows[j], app.flight->scenario);
                const auto found = std::ranges::find(names, choice);
                REQUIRE(found != names.end());
                apply(app,
                      SetStation{static_cast<int>(i), static_cast<int>(j),
                                 static_cast<int>(found - names.begin())},
                      host);
                return;
            }
        }
        FAIL("no row of that name");
    }
    void key(Key key) {
        RawInput raw;
        raw.pressed[static_cast<std::size_t>(key)] = true;
        for (const Action& action : read_class_keys(raw)) apply(app, action, host);
    }
    // Runs for so long, in frames of a thirtieth of a second, and freezes again.
    void run(double seconds) {
        if (app.flight->paused) freeze_or_run(app);
        go_on(seconds);
        app.flight->paused = true;
    }
    void go_on(double seconds) {
        for (double s = 0; s < seconds; s += 1.0 / 30) {
            wall_s += 1.0 / 30;
            advance_class(app, quantize(app.hands.at), wall_s);
        }
    }
    TrackPoint now() const { return observe(app.flight->scenario, app.flight->attempt); }
    ControlPositions flown() const { return positions_of(app.flight->attempt.controls); }
    std::string text() { return make_view(app).mirror.screen; }
    const Lesson& lesson() const { return app.flight->scenario.lesson; }
};

}  // namespace

TEST_CASE("station desk: distance, side and speed are put one press each, frozen, and keep one another") {
    Class room;
    room.press("Distance, NM", "1");
    room.press("Path", "Low");
    room.press("Speed", "Fast");
    room.press("Flap set", "half");
    const TrackPoint now = room.now();
    CHECK_NEAR(nm_from_m(now.distance_m), 1.0, 1e-9);
    CHECK_NEAR(deg_from_rad(now.path_error_rad), -0.7, 1e-9);
    CHECK_NEAR(kt_from_mps(now.cas_mps), 75.0, 0.05);  // the reference point is a little below the eye
    CHECK(now.flap_setting == 1);
    CHECK(room.app.flight->paused);
    CHECK(room.app.room.flights == 5);  // the class's first and these
}

TEST_CASE("station desk: a flight that runs goes on running after a press, one that is frozen stays so") {
    Class room;
    freeze_or_run(room.app);
    room.go_on(2.0);
    const double before_m = room.now().distance_m;
    room.press("Headwind, kt", "20");
    CHECK_FALSE(room.app.flight->paused);
    CHECK_NEAR(room.now().distance_m, before_m, 1e-6);
    room.go_on(1.0);
    CHECK(room.now().distance_m < before_m - 10.0);
    room.app.flight->paused = true;
    room.press("Headwind, kt", "0");
    CHECK(room.app.flight->paused);
}

TEST_CASE("station desk: what is as it is already puts nothing anew, but a place pressed again is taken up") {
    Class room;
    room.run(5.0);
    const int flights = room.app.room.flights;
    room.press("Headwind, kt", "0");
    room.press("Sky", "Clear");
    room.press("Airspeed", "Works");
    CHECK(room.app.room.flights == flights);
    room.press("Path", "On it");
    CHECK(room.app.room.flights == flights + 1);
}

TEST_CASE("station desk: what cannot be flown changes nothing and says why and what can") {
    Class room;
    room.press("Speed", "Slow");
    const std::uint64_t before = state_hash(room.app.flight->attempt);
    const int flights = room.app.room.flights;
    // Ten knots under the speed with landing flap, the wing does not hold without it.
    room.press("Flap set", "up");
    CHECK(room.app.room.flights == flights);
    CHECK(state_hash(room.app.flight->attempt) == before);
    CHECK(has(room.text(), "That cannot be flown: "));
    CHECK(has(room.text(), "Of \"Flap set\" can be flown from here: "));
    CHECK(has(room.text(), "landing"));
    room.press("Flap set", "landing");
    CHECK_FALSE(has(room.text(), "cannot be flown"));
}

TEST_CASE("station desk: N puts it where it was put last, M on the other side, whatever was set since") {
    Class room;
    room.press("Distance, NM", "2");
    room.press("Path", "High");
    room.run(6.0);
    room.press("Headwind, kt", "10");
    room.press("Light", "Dusk");
    room.key(Key::n);
    CHECK_NEAR(nm_from_m(room.now().distance_m), 2.0, 1e-9);
    CHECK_NEAR(deg_from_rad(room.now().path_error_rad), 0.7, 1e-9);
    CHECK_NEAR(kt_from_mps(room.lesson().wind.headwind_mps), 10.0, 1e-9);
    CHECK(room.lesson().outlook.light == Daylight::dusk);
    room.key(Key::m);
    CHECK_NEAR(deg_from_rad(room.now().path_error_rad), -0.7, 1e-9);
    CHECK_NEAR(nm_from_m(room.now().distance_m), 2.0, 1e-9);
}

TEST_CASE("station desk: everything works again, lights and all, with one press") {
    Class room;
    room.press("Airspeed", "Blank");
    room.press("Unit out", "All");
    room.press("Power left", "None");
    room.press("Lights", "Off");
    CHECK(room.lesson().failure_count == 3);
    CHECK_FALSE(room.app.room.shown.lights);
    room.press("Restore", "Everything works again");
    CHECK(room.lesson().failure_count == 0);
    CHECK(room.app.room.shown.lights);
    CHECK(has(room.text(), "Airspeed: Works, of Works, Blank, Stuck."));
}

TEST_CASE("station desk: with power alone the keys move the lever and the model pilot the stick") {
    Class room;
    room.press("Path", "High");
    room.press("At the keys", "Power");
    room.app.hands.at.throttle = 0.13;
    room.app.hands.at.stick = 0.9;
    room.run(4.0);
    CHECK_NEAR(room.flown().throttle, 0.13, 1e-4);  // half a step of the lever is less
    CHECK(room.flown().stick < 0.8);
    CHECK(has(room.text(), "The model pilot has the stick and the trim, the one at the keys the power."));
    CHECK_FALSE(waits_for_answer(*room.app.flight));  // before a class nothing waits
}

TEST_CASE("station desk: with pitch alone the model pilot has the power, and who has what outlasts a press") {
    Class room;
    room.press("At the keys", "Pitch");
    room.press("Path", "Low");
    room.app.hands.at.throttle = 0.0;
    room.run(4.0);
    CHECK(room.flown().throttle > 0.2);
    CHECK_NEAR(room.app.hands.at.throttle, room.flown().throttle, 1e-9);  // the hands rest on it
}

TEST_CASE("station desk: a pilot shows how and holds the path, one with a fault shows how not") {
    const auto worst_deg = [](std::string_view shown) {
        Class room;
        room.press("Distance, NM", "2");
        room.press("Path", "Low");
        room.press("Headwind, kt", "15");
        room.press("Show how", shown);
        room.run(60.0);
        return std::abs(deg_from_rad(room.now().path_error_rad));
    };
    CHECK(worst_deg("Well") < 0.25);
    CHECK(worst_deg("Wind unminded") > 0.5);
}

TEST_CASE("station desk: C takes everything back from who shows it, and gives everything up again") {
    Class room;
    room.press("Show how", "Late power");
    CHECK(has(room.text(), "The model pilot is late with the power."));
    room.run(2.0);
    const double lever = room.flown().throttle;
    room.key(Key::c);
    CHECK(has(room.text(), "The one at the keys flies."));
    CHECK_NEAR(room.app.hands.at.throttle, lever, 1e-3);  // nothing jumps
    room.run(1.0);
    CHECK_NEAR(room.flown().throttle, lever, 1e-3);
    room.key(Key::c);
    CHECK(has(room.text(), "The model pilot flies, the one at the keys watches."));
}

TEST_CASE("station desk: one who goes around before a class has all controls") {
    Class room;
    room.press("At the keys", "Nothing");
    room.run(1.0);
    room.key(Key::g);
    CHECK(room.app.room.station.share == ControlShare::both);
    room.run(1.0);
    CHECK(room.flown().throttle == 1.0);
    CHECK(room.app.flight->attempt.end == End::went_around);
}

TEST_CASE("station desk: the calm air beside it shows the path from the side, in dots and in words") {
    Class room;
    room.press("Headwind, kt", "20");
    room.press("In calm air too", "Shown");
    CHECK(room.app.room.shown.side_profile);
    room.run(45.0);
    const View view = make_view(room.app);
    const SideProfileView& side = view.flight.side_profile;
    CHECK(side.calm.size() > 40);
    CHECK(side.calm.back().distance_nm < side.flown.back().distance_nm);  // it is ahead
    CHECK(has(side.calm_words, "Same hands in calm air: "));
    CHECK(has(side.calm_words, " ft higher here"));
    CHECK(has(side.calm_words, " s earlier"));
    CHECK(has(view.mirror.screen, side.calm_words));
    room.press("In calm air too", "Hidden");
    CHECK(make_view(room.app).flight.side_profile.calm.empty());
    CHECK(make_view(room.app).station.calm.empty());
}

TEST_CASE("station desk: a second window with the lesson and the controls alone has the same calm flight") {
    Class room;
    room.press("Headwind, kt", "15");
    room.press("Gusts", "Some");
    room.press("In calm air too", "Shown");
    room.press("Show how", "Well");
    room.run(20.0);

    Class other;  // follows: nothing of the first's desk
    REQUIRE(put_class_flight(other.app, room.lesson()));
    other.app.room.shown = room.app.room.shown;
    const Recording& recording = room.app.flight->recording;
    std::size_t next = 0;
    Controls controls = other.app.flight->attempt.controls;
    while (other.app.flight->attempt.tick < recording.ticks) {
        if (next < recording.changes.size() && recording.changes[next].tick == other.app.flight->attempt.tick)
            controls = recording.changes[next++].controls;
        tick_session(*other.app.flight, controls);
    }
    follow_in_calm(other.app);
    const SideProfileView here = make_view(room.app).flight.side_profile;
    const SideProfileView there = make_view(other.app).flight.side_profile;
    CHECK(here.calm_words == there.calm_words);
    REQUIRE(here.calm.size() == there.calm.size());
    CHECK(here.calm.back().height_ft == there.calm.back().height_ft);
    CHECK(make_view(room.app).flight.caption == make_view(other.app).flight.caption);
}
