// The hands: what keys make of stick, lever, flap and trim. Controllers: test_controllers.cpp.
#include <doctest/doctest.h>

#include "tests/check.h"
#include "ui/input.h"

using namespace slopewise;

namespace {

constexpr double frame_s = 1.0 / 60.0;

// Holds a key for so many seconds, then lets go for so many more; `pressed` only in the first frame.
void hold(PilotHands& hands, Key key, double held_s, double released_s,
          const Settings& settings = {true, true}) {
    double now_s = hands.last_wall_s;
    bool first = true;
    for (double t = 0.0; t < held_s + released_s - 1e-9; t += frame_s) {
        RawInput raw;
        raw.wall_s = now_s += frame_s;
        raw.held[static_cast<std::size_t>(key)] = t < held_s - 1e-9;
        raw.pressed[static_cast<std::size_t>(key)] = first;
        first = false;
        read_input(hands, raw, settings, 3);
    }
}

}  // namespace

TEST_CASE("input: a tap on a stick key moves the stick one or two per cent of its travel") {
    PilotHands hands;
    hold(hands, Key::down, 0.05, 0.0);
    CHECK(hands.at.stick > 0.008);
    CHECK(hands.at.stick < 0.025);
}

TEST_CASE("input: the stick springs back to the trimmed position when let go") {
    PilotHands hands;
    hold(hands, Key::down, 0.5, 0.0);
    const double held = hands.at.stick;
    CHECK(held > 0.1);
    hold(hands, Key::down, 0.0, 0.4);
    CHECK_NEAR(hands.at.stick, held * 0.3679, 0.02 * held);  // one time constant of 0.4 s leaves 1/e
    hold(hands, Key::down, 0.0, 3.0);
    CHECK(hands.at.stick == 0.0);
}

TEST_CASE("input: the up key pushes or pulls as the user answered") {
    PilotHands pushes, pulls;
    hold(pushes, Key::up, 0.3, 0.0, {true, true});
    hold(pulls, Key::up, 0.3, 0.0, {false, true});
    CHECK(pushes.at.stick < 0.0);
    CHECK(pulls.at.stick > 0.0);
    CHECK_NEAR(pushes.at.stick, -pulls.at.stick, 1e-12);
}

TEST_CASE("input: the throttle stays where it is put, two per cent a tap, fifteen a second held") {
    PilotHands hands;
    hands.at.throttle = 0.3;
    hold(hands, Key::e, 0.05, 1.0);
    CHECK_NEAR(hands.at.throttle, 0.32, 1e-12);
    hold(hands, Key::d, 0.05, 1.0);
    CHECK_NEAR(hands.at.throttle, 0.30, 1e-12);
    hold(hands, Key::e, 2.3, 1.0);  // one tap, a wait of 0.3 s, then two seconds of moving
    CHECK_NEAR(hands.at.throttle, 0.30 + 0.02 + 0.30, 0.01);
    hold(hands, Key::x, 0.05, 1.0);
    CHECK(hands.at.throttle == 0.0);
}

TEST_CASE("input: flap goes a step a press and stops at both ends") {
    PilotHands hands;
    for (int i = 0; i < 5; ++i) hold(hands, Key::f, 0.1, 0.1);
    CHECK(hands.at.flap == 2);
    for (int i = 0; i < 5; ++i) hold(hands, Key::r, 0.1, 0.1);
    CHECK(hands.at.flap == 0);
}

TEST_CASE("input: a long stall of the page moves nothing by more than a tenth of a second's worth") {
    PilotHands hands;
    RawInput raw;
    raw.held[static_cast<std::size_t>(Key::u)] = true;
    raw.wall_s = 500.0;
    read_input(hands, raw, {}, 3);
    CHECK(hands.at.trim > 0.0);
    CHECK(hands.at.trim <= 0.0121);
}
