// Sticky keys: a press holds, the next one lets go.
#include <doctest/doctest.h>

#include <string>

#include "tests/ui/class_player.h"
#include "ui/key_bindings.h"
#include "ui/sticky_keys.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

constexpr double frame_s = 1.0 / 60.0;

Settings sticky_settings() {
    Settings settings;
    settings.up_key_pushes = true;
    settings.keys.sticky = true;
    return settings;
}

struct Pilot {
    Settings settings = sticky_settings();
    PilotHands hands;

    // A key down for one frame.
    void tap(Key key) {
        RawInput raw;
        raw.held[static_cast<std::size_t>(key)] = raw.pressed[static_cast<std::size_t>(key)] = true;
        frame(raw);
    }
    void wait(double seconds) {
        for (double t = 0; t < seconds - 1e-9; t += frame_s) frame({});
    }
    void frame(RawInput raw) {
        raw.wall_s = hands.last_wall_s + frame_s;
        read_input(hands, raw, settings, 3);
    }
    std::string held() const {
        std::string words;
        held_words(hands.held_so, settings.up_key_pushes.value_or(true), words);
        return words;
    }
};

}  // namespace

TEST_CASE("sticky keys: one tap pulls until the next, and then the stick springs back") {
    Pilot pilot;
    pilot.tap(Key::down);
    pilot.wait(1.0);
    CHECK(pilot.hands.at.stick > 0.5);
    CHECK(pilot.held() == "Held: nose up");
    pilot.tap(Key::down);
    CHECK(pilot.held().empty());
    pilot.wait(3.0);
    CHECK(pilot.hands.at.stick == 0.0);
}

TEST_CASE("sticky keys: the opposite key lets go and does nothing else") {
    Pilot pilot;
    pilot.hands.at.throttle = 0.3;
    pilot.tap(Key::e);
    pilot.wait(1.0);
    const double reached = pilot.hands.at.throttle;
    CHECK(reached > 0.4);  // a tap of 0.02, then 0.15 a second after 0.3 s
    pilot.tap(Key::d);
    CHECK(pilot.hands.at.throttle == reached);  // no tap down
    pilot.wait(1.0);
    CHECK(pilot.hands.at.throttle == reached);
    pilot.tap(Key::d);  // now it is a press of its own
    pilot.wait(1.0);
    CHECK(pilot.hands.at.throttle < reached - 0.1);
}

TEST_CASE("sticky keys: letting go by the same key adds no tap") {
    Pilot pilot;
    pilot.hands.at.throttle = 0.3;
    pilot.tap(Key::e);
    CHECK(pilot.hands.at.throttle == doctest::Approx(0.32));
    pilot.tap(Key::e);
    CHECK(pilot.hands.at.throttle == doctest::Approx(0.32));
}

TEST_CASE("sticky keys: several are held together, and all of it stands in words") {
    Pilot pilot;
    for (const Key key : {Key::up, Key::d, Key::j, Key::v, Key::a}) pilot.tap(key);
    CHECK(pilot.hands.peek());
    CHECK(pilot.hands.calls_for_help());
    CHECK(pilot.held() == "Held: nose down, less power, trim nose down, look in, path help");
    CHECK(pilot.held().size() <= 64);  // what the caption has room for without taking memory
    pilot.tap(Key::v);
    CHECK_FALSE(pilot.hands.peek());
}

TEST_CASE("sticky keys: going around, pausing, handing over and screen and help let go of everything") {
    for (const Key key : {Key::g, Key::p, Key::space, Key::escape, Key::c, Key::h}) {
        Pilot pilot;
        for (const Key held : {Key::down, Key::e, Key::u}) pilot.tap(held);
        pilot.tap(key);
        CHECK(pilot.held().empty());
    }
}

TEST_CASE("sticky keys: a flap step, a look at nothing and everything else stay single presses") {
    Pilot pilot;
    pilot.tap(Key::f);
    pilot.wait(1.0);
    CHECK(pilot.hands.at.flap == 1);
    CHECK(pilot.held().empty());
}

TEST_CASE("sticky keys: off, a key is held only while it is down, and what was held before is let go") {
    Pilot pilot;
    pilot.tap(Key::down);
    pilot.settings.keys.sticky = false;
    pilot.frame({});
    CHECK(pilot.held().empty());
    pilot.tap(Key::down);
    pilot.frame({});
    CHECK(pilot.held().empty());
}

TEST_CASE("sticky keys: with the stick under the left hand and keys bound anew it is the same") {
    Pilot pilot;
    pilot.settings.school.stick_hand = StickHand::left;
    bind_key(pilot.settings.keys, KeyCommand::less_power, {Key::pad_2});  // by hand: the lower stick key
    pilot.tap(Key::pad_2);
    CHECK(pilot.held() == "Held: nose up");
    pilot.tap(Key::e);  // the upper stick key is its opposite
    CHECK(pilot.held().empty());
}

TEST_CASE(
    "sticky keys: what is held stands on the flight screen, and a warning says so when it is the nose") {
    TestHost host;
    App app = make_app(shipped(), host);
    app.settings = sticky_settings();
    apply(app, StartFlight{}, host);
    app.hands.held_so.on[1] = true;  // the down key
    CHECK(make_view(app).flight.caption == "Held: nose up");
    CHECK(make_view(app).mirror.screen.find("Held: nose up") != std::string::npos);
    app.flight->stalling = 1;
    CHECK(make_view(app).flight.caption == "Stall warning: nose up is held");
    app.hands.held_so.on = {};
    CHECK(make_view(app).flight.caption == "Stall warning: lower the nose");
    app.hands.held_so.on[2] = true;
    apply(app, GoAround{}, host);  // by a button
    CHECK_FALSE(app.hands.held_so.any());
}
