// Sticks, levers and gamepads in the hands: what they move at once, and what they never move.
#include "tests/check.h"
#include "tests/ui/controller_player.h"
#include "tests/wish_in.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

constexpr double not_told = std::numeric_limits<double>::quiet_NaN();

// The default dead zone and expo by their definition: (1 - k) x + k x^3 beyond 6 %, k = 0.4, of a travel
// whose last 2 % count as its end.
double by_definition(double axis) {
    const double x = (axis / 0.98 - 0.06) / 0.94;
    return 0.6 * x + 0.4 * x * x * x;
}

// A stick with a lever on axis 3, which stands at `lever`, -1 open.
ControllerReading stick_with_lever(double lever) {
    ControllerReading reading = device("Four-axis stick", 4, 8);
    reading.axes[3] = lever;
    return reading;
}

template <class Wanted>
bool asks_for(const Actions& actions) {
    for (const Action& action : actions)
        if (wish_in<Wanted>(action) != nullptr) return true;
    return false;
}

}  // namespace

// Which part is which: W3C Gamepad, "Standard gamepad"; from memory.
TEST_CASE("controllers: a standard gamepad flies as it comes, with stick, throttle, trim and flap") {
    ControllerPlayer player(standard_gamepad());
    player.hands.at.throttle = 0.4;
    player.frame();
    player.give(1, 0.5);  // the left stick down, back
    CHECK_NEAR(player.hands.at.stick, by_definition(0.5), 1e-12);
    player.give(1, -1.0);
    CHECK_NEAR(player.hands.at.stick, -1.0, 1e-12);
    player.give(1, 0.0);
    CHECK(player.hands.at.stick == 0.0);

    player.at().axes[3] = -1.0;  // the right stick up: half of all power a second
    player.pass(0.5);
    CHECK_NEAR(player.hands.at.throttle, 0.4 + 0.25, 0.5 * frame_s + 1e-9);  // a frame more or less
    player.give(3, 0.0);
    const double there = player.hands.at.throttle;
    player.pass(1.0);
    CHECK(player.hands.at.throttle == there);

    player.press(13);  // the pad down: nose up
    CHECK(player.hands.at.trim > 0.0);
    player.let_go(13);
    const double trimmed = player.hands.at.trim;
    player.press(12);
    CHECK(player.hands.at.trim < trimmed);
    player.let_go(12);
    player.press(5);
    CHECK(player.hands.at.flap == 1);
    player.let_go(5);
    player.press(4);
    CHECK(player.hands.at.flap == 0);
    player.press(4);
    CHECK(player.hands.at.flap == 0);  // no further than up
}

TEST_CASE(
    "controllers: buttons ask for go-around, pause and the exchange once a press, and hold help and a look") {
    ControllerPlayer player(standard_gamepad());
    player.frame();
    player.press(3);
    CHECK(asks_for<GoAround>(player.asked));
    player.frame();  // still down
    CHECK_FALSE(asks_for<GoAround>(player.asked));
    player.press(9);
    CHECK(asks_for<TogglePause>(player.asked));
    player.press(8);
    CHECK(asks_for<ExchangeControls>(player.asked));
    player.press(0);
    player.pass(0.2);
    CHECK(player.hands.calls_for_help());
    player.let_go(0);
    CHECK_FALSE(player.hands.calls_for_help());
    player.press(2);
    CHECK(player.hands.peek());
    player.let_go(2);
    CHECK_FALSE(player.hands.peek());
    player.hands.at.throttle = 0.5;
    player.press(1);
    CHECK(player.hands.at.throttle == 0.0);

    ControllerReadings pressed = player.raw.controllers;
    pressed.at[0].pressed = 1u << 9;
    CHECK(asks_for<FreezeOrRun>(controller_actions(pressed, {}, true)));
    CHECK_FALSE(asks_for<TogglePause>(controller_actions(pressed, {}, true)));
}

TEST_CASE("controllers: a button that is held while a flight begins presses nothing") {
    ControllerPlayer player(standard_gamepad());
    player.at().buttons = 0x1FFFFu & ~(1u << 12) & ~(1u << 13);  // all but the trim
    player.hands.at.throttle = 0.4;
    player.frame();
    CHECK(player.asked.empty());
    CHECK(player.hands.at.flap == 0);
    CHECK(player.hands.at.throttle == 0.4);
}

TEST_CASE("controllers: the dead zone gives nothing, and beyond it the curve is gentle and reaches all") {
    AxisSetting axis;
    axis.does = AxisDoes::stick;
    CHECK(shaped(axis, 0.05) == 0.0);
    CHECK(shaped(axis, -0.05) == 0.0);
    CHECK_NEAR(shaped(axis, 0.5), by_definition(0.5), 1e-12);
    CHECK_NEAR(shaped(axis, -0.5), -by_definition(0.5), 1e-12);
    CHECK(shaped(axis, 0.99) == 1.0);
    axis.inverted = true;
    CHECK_NEAR(shaped(axis, 0.5), -by_definition(0.5), 1e-12);
    axis = {AxisDoes::stick, false, -0.5, 0.25, 0.75, 0.0, 0.0};  // off its middle, and straight
    CHECK(shaped(axis, 0.25) == 0.0);
    CHECK_NEAR(shaped(axis, 0.5), 0.5 / 0.98, 1e-12);
    CHECK_NEAR(shaped(axis, -0.125), -0.5 / 0.98, 1e-12);
    CHECK(shaped(axis, -1.0) == -1.0);
    axis.does = AxisDoes::throttle;
    CHECK(shaped(axis, -0.5) == 0.0);
    CHECK_NEAR(shaped(axis, 0.125), 0.5, 1e-12);
    CHECK(shaped(axis, 0.75) == 1.0);
}

TEST_CASE("controllers: a stick has a say from its first movement until a stick key is used") {
    ControllerPlayer player(stick_with_lever(0.0));
    player.give(1, 0.03);  // within the dead zone
    CHECK_FALSE(player.hands.controller_has_stick);
    CHECK(player.hands.at.stick == 0.0);
    player.give(1, 1.0);
    CHECK(player.hands.controller_has_stick);
    CHECK_NEAR(player.hands.at.stick, 1.0, 1e-12);
    player.key(Key::up, true);
    CHECK_FALSE(player.hands.controller_has_stick);
    player.key(Key::up, false);
    player.pass(3.0);
    CHECK(player.hands.at.stick == 0.0);  // held over where it was, it says nothing
    player.give(1, 0.8);
    CHECK_NEAR(player.hands.at.stick, by_definition(0.8), 1e-12);
}

TEST_CASE("controllers: a stick that stands off its centre and trembles never moves what the keys fly") {
    ControllerPlayer player(stick_with_lever(0.0));
    player.at().axes[1] = 0.4;
    player.frame();
    for (int i = 0; i < 120; ++i) player.give(1, 0.4 + (i % 2 == 0 ? 0.02 : -0.02));
    CHECK(player.hands.at.stick == 0.0);
    CHECK(devices_words(player.hands.used) == "no hand");
    player.key(Key::down, true);
    player.pass(0.3);
    const double pulled = player.hands.at.stick;
    CHECK(pulled > 0.1);
    for (int i = 0; i < 60; ++i) player.give(1, 0.4 + (i % 2 == 0 ? 0.02 : -0.02));
    CHECK(player.hands.at.stick > pulled);
    CHECK(devices_words(player.hands.used) == "keyboard");
}

TEST_CASE("controllers: unplugged, a stick lets the stick spring back") {
    ControllerPlayer player(stick_with_lever(0.0));
    player.frame();
    player.give(1, 1.0);
    player.raw.controllers = {};
    player.pass(3.0);
    CHECK_FALSE(player.hands.controller_has_stick);
    CHECK(player.hands.at.stick == 0.0);
}

TEST_CASE("controllers: a lever left alone moves nothing, wherever it stands and however it trembles") {
    for (const double stands : {-1.0, -0.2, 0.0, 0.9, 1.0}) {
        CAPTURE(stands);
        ControllerPlayer player(stick_with_lever(stands));
        player.hands.at.throttle = 0.38;
        for (int i = 0; i < 120; ++i) player.give(3, stands + (i % 2 == 0 ? 0.015 : -0.015));
        CHECK(player.hands.at.throttle == 0.38);
    }
}

TEST_CASE(
    "controllers: moved, a lever takes the throttle its own way with no jump, and they meet at the end") {
    ControllerPlayer player(stick_with_lever(1.0));  // closed
    player.hands.at.throttle = 0.38;
    player.frame();
    double before = 0.38;
    for (double lever = 1.0; lever >= -1.0; lever -= 0.01) {
        player.give(3, lever);
        CHECK(player.hands.at.throttle >= before);
        CHECK(player.hands.at.throttle - before < 0.03);  // a hundredth of the travel, or two to wake it
        before = player.hands.at.throttle;
    }
    CHECK(player.hands.at.throttle == 1.0);
    player.give(3, 0.0);  // together from there on
    CHECK_NEAR(player.hands.at.throttle, 0.5, 1e-12);
    player.give(3, 1.0);
    CHECK(player.hands.at.throttle == 0.0);
}

TEST_CASE("controllers: a lever that stands over the throttle and is closed closes it") {
    ControllerPlayer player(stick_with_lever(-0.8));  // nine tenths open
    player.hands.at.throttle = 0.38;
    player.frame();
    player.give(3, -0.6);
    CHECK(player.hands.at.throttle < 0.38);
    CHECK(player.hands.at.throttle > 0.25);
    player.give(3, 1.0);
    CHECK(player.hands.at.throttle == 0.0);
}

TEST_CASE("controllers: what keys have made of the throttle stays until the lever is moved anew") {
    ControllerPlayer player(stick_with_lever(1.0));
    player.frame();
    player.give(3, 0.0);
    player.give(3, 1.0);
    CHECK(player.hands.at.throttle == 0.0);
    player.key(Key::e, true);
    player.pass(3.0);
    player.key(Key::e, false);
    const double opened = player.hands.at.throttle;
    CHECK(opened > 0.3);
    for (int i = 0; i < 60; ++i) player.give(3, 1.0 - (i % 2 == 0 ? 0.03 : 0.0));
    CHECK(player.hands.at.throttle == opened);
    player.give(3, -1.0);
    CHECK(player.hands.at.throttle == 1.0);
}

TEST_CASE("controllers: a lever that the device has not told of yet makes no jump when it does") {
    ControllerPlayer player(stick_with_lever(not_told));
    player.hands.at.throttle = 0.38;
    player.frame();
    player.give(3, 0.96);
    CHECK(player.hands.at.throttle == 0.38);
    player.give(3, 0.9);
    CHECK_NEAR(player.hands.at.throttle, 0.38, 0.03);  // by the share it moved
    CHECK(player.hands.at.throttle > 0.38);
}

TEST_CASE("controllers: what commands a rate says nothing before it has been at its centre") {
    ControllerPlayer player(standard_gamepad());
    player.hands.at.throttle = 0.4;
    player.at().axes[3] = -1.0;  // such as a lever would stand
    player.pass(2.0);
    CHECK(player.hands.at.throttle == 0.4);
    player.give(3, 0.0);
    player.at().axes[3] = -1.0;
    player.pass(0.5);
    CHECK(player.hands.at.throttle > 0.6);
}

TEST_CASE("controllers: a flap lever has a notch for each setting, and does not tremble between two") {
    ControllerReading lever = device("Flap", 1, 0);
    lever.axes[0] = -1.0;
    ControllerPlayer player(lever);
    ControllerSetting setting = usual_setting(lever);
    setting.axes[0] = {AxisDoes::flap};
    keep_setting(player.settings.controllers, setting);
    player.hands.at.flap = 2;
    player.frame();
    CHECK(player.hands.at.flap == 2);  // not before it is moved
    player.give(0, 0.0);
    CHECK(player.hands.at.flap == 1);
    for (int i = 0; i < 20; ++i) player.give(0, i % 2 == 0 ? 0.48 : 0.52);
    CHECK(player.hands.at.flap == 1);
    player.give(0, 1.0);
    CHECK(player.hands.at.flap == 2);
    player.give(0, -1.0);
    CHECK(player.hands.at.flap == 0);
}

TEST_CASE("controllers: a trim wheel turns the trim its own way from where it stood") {
    ControllerReading wheel = device("Wheel", 1, 0);
    wheel.axes[0] = 0.6;
    ControllerPlayer player(wheel);
    ControllerSetting setting = usual_setting(wheel);
    setting.axes[0] = {AxisDoes::trim};
    keep_setting(player.settings.controllers, setting);
    player.hands.at.trim = -0.1;
    player.pass(1.0);
    CHECK(player.hands.at.trim == -0.1);
    player.give(0, 0.7);
    CHECK(player.hands.at.trim > -0.1);
    CHECK(player.hands.at.trim < 0.3);
    player.give(0, 1.0);
    CHECK(player.hands.at.trim == 1.0);
    player.give(0, -1.0);
    CHECK(player.hands.at.trim == -1.0);
}

TEST_CASE(
    "controllers: a stick and a throttle quadrant fly together, and when one goes the other does not jump") {
    ControllerPlayer player(device("Plain stick", 2, 4, 'a'));
    ControllerReading quadrant = device("Throttle quadrant", 3, 6, 'b');
    quadrant.axes = {1.0, 0.3, -0.7};
    player.connect(quadrant);
    player.hands.at.throttle = 0.4;
    player.frame();
    player.at(1).axes[1] = -0.9;  // its second lever is no stick
    player.frame();
    CHECK(player.hands.at.stick == 0.0);
    player.give(1, 1.0);
    player.at(1).axes[0] = -1.0;
    player.frame();
    CHECK(player.hands.at.stick == 1.0);
    CHECK(player.hands.at.throttle == 1.0);
    CHECK(devices_words(player.hands.used) == "controller: Plain stick, controller: Throttle quadrant");

    player.hands.at.throttle = 0.4;
    player.at(1).axes[0] = 1.0;
    player.at(0) = player.at(1);  // moves up where the stick was
    player.raw.controllers.count = 1;
    player.frame();
    CHECK(player.hands.at.throttle == 0.4);
}

TEST_CASE(
    "controllers: an unknown stick has its fore and aft axis, its last axis as throttle, its hat as trim") {
    ControllerReading stick = device("Five-axis stick", 6, 12);
    stick.hat_axes = 2;
    const ControllerSetting usual = usual_setting(stick);
    CHECK(usual.axes[1].does == AxisDoes::stick);
    CHECK(usual.axes[3].does == AxisDoes::throttle);
    CHECK(usual.axes[5].does == AxisDoes::trim_rate);
    CHECK(usual_setting(device("Rudder pedals", 3, 0)).axes[1].does == AxisDoes::nothing);
    CHECK(usual_setting(device("Two axes", 2, 0)).axes[1].does == AxisDoes::stick);
}
