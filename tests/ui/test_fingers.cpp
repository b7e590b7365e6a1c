// Which finger is the mouse, and what the program's hands hold by the thumb pads.
#include <doctest/doctest.h>

#include "tests/ui/test_host.h"
#include "ui/app.h"
#include "ui/finger_mouse.h"
#include "ui/pads_view.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

constexpr FingerAreas left_corner{1, {{{0, 200, 100, 300}}}};

}  // namespace

TEST_CASE("fingers: the first one down is the mouse until it lets go, and no other is meanwhile") {
    FingerMouse hand;
    CHECK(take(hand, FingerEvent::down, 7, 40, 50) == MouseEvent::press);
    CHECK(take(hand, FingerEvent::down, 8, 90, 50) == MouseEvent::none);
    CHECK(take(hand, FingerEvent::move, 8, 95, 50) == MouseEvent::none);
    CHECK(take(hand, FingerEvent::move, 7, 41, 60) == MouseEvent::move);
    CHECK(take(hand, FingerEvent::up, 7, 41, 60) == MouseEvent::release);
    // The other one rests on: it began as no mouse and does not become one.
    CHECK(take(hand, FingerEvent::move, 8, 99, 50) == MouseEvent::none);
    CHECK(take(hand, FingerEvent::up, 8, 99, 50) == MouseEvent::none);
    CHECK(take(hand, FingerEvent::down, 9, 1, 1) == MouseEvent::press);
}

TEST_CASE("fingers: one on a thumb pad is never the mouse, wherever it goes, and leaves it to the next one") {
    FingerMouse hand;
    hand.areas = left_corner;
    CHECK(take(hand, FingerEvent::down, 0, 50, 250) == MouseEvent::none);
    CHECK(take(hand, FingerEvent::move, 0, 400, 20) == MouseEvent::none);
    CHECK(take(hand, FingerEvent::down, 1, 400, 20) == MouseEvent::press);
    CHECK(take(hand, FingerEvent::up, 0, 400, 20) == MouseEvent::none);
    CHECK(take(hand, FingerEvent::up, 1, 400, 20) == MouseEvent::release);
}

TEST_CASE("fingers: each is told as new in one frame alone, with where it began and where it is") {
    FingerMouse hand;
    CHECK_FALSE(fingers_now(hand).ever);
    take(hand, FingerEvent::down, 3, 10, 20);
    take(hand, FingerEvent::move, 3, 11, 25);
    const Fingers first = fingers_now(hand);
    REQUIRE(first.count == 1);
    CHECK(first.at[0].came);
    CHECK(first.at[0].began_y == 20);
    CHECK(first.at[0].y == 25);
    const Fingers second = fingers_now(hand);
    REQUIRE(second.count == 1);
    CHECK_FALSE(second.at[0].came);
    CHECK(second.at[0].id == 3);
    take(hand, FingerEvent::up, 3, 11, 25);
    CHECK(fingers_now(hand).count == 0);
    CHECK(fingers_now(hand).ever);
}

TEST_CASE(
    "fingers: what the browser takes away lets go of the mouse, and a lost end does not leave it held") {
    FingerMouse hand;
    take(hand, FingerEvent::down, 0, 10, 20);
    CHECK(take(hand, FingerEvent::lost, 0, 10, 20) == MouseEvent::release);
    CHECK(fingers_now(hand).count == 0);
    take(hand, FingerEvent::down, 0, 10, 20);
    take(hand, FingerEvent::down, 0, 30, 40);  // the same name again: the end between them was never told
    CHECK(fingers_now(hand).count == 1);
    CHECK(take(hand, FingerEvent::up, 0, 30, 40) == MouseEvent::release);
    CHECK(take(hand, FingerEvent::up, 0, 30, 40) == MouseEvent::none);
}

TEST_CASE("fingers: a page that is turned under them moves none, and they go on from where they were") {
    FingerMouse hand;
    hand.areas = left_corner;
    take(hand, FingerEvent::down, 0, 50, 250);
    take(hand, FingerEvent::move, 0, 50, 260);
    turn_page(hand);
    CHECK(fingers_now(hand).at[0].y == 260);
    take(hand, FingerEvent::move, 0, 300, 40);  // where the same place now is
    CHECK(fingers_now(hand).at[0].y == 260);
    take(hand, FingerEvent::move, 0, 300, 35);
    CHECK(fingers_now(hand).at[0].y == 255);
    CHECK(fingers_now(hand).at[0].began_y == 250);
    take(hand, FingerEvent::up, 0, 300, 35);
    take(hand, FingerEvent::down, 0, 300, 35);  // anew: it counts where it is
    CHECK(fingers_now(hand).at[0].y == 35);
}

TEST_CASE("fingers: a sixth is not heard, and does not disturb the five") {
    FingerMouse hand;
    for (int id = 0; id < most_fingers; ++id) take(hand, FingerEvent::down, id, id, 0);
    CHECK(take(hand, FingerEvent::down, 99, 5, 5) == MouseEvent::none);
    CHECK(take(hand, FingerEvent::move, 99, 6, 6) == MouseEvent::none);
    CHECK(fingers_now(hand).count == most_fingers);
    take(hand, FingerEvent::up, 0, 0, 0);
    CHECK(fingers_now(hand).count == most_fingers - 1);
    CHECK(fingers_now(hand).at[0].id == 1);
}

TEST_CASE(
    "thumb pads: a thumb moves what the hands hold, and that it did is known; the mouse leaves no such "
    "mark") {
    TestHost host;
    App app = make_app(shipped(), host);
    apply(app, MoveStick{0.4}, host);
    apply(app, SetThrottle{0.5}, host);
    CHECK_FALSE(app.hands.used.thumb_pads);
    apply(app, SetThrottle{0.6, true}, host);
    CHECK(app.hands.used.thumb_pads);
    CHECK(app.hands.at.throttle == 0.6);
}

TEST_CASE("thumb pads: they change sides with the school's hand and have the sense of the up key") {
    TestHost host;
    App app = make_app(shipped(), host);
    PadsView view;
    pads_view(app, view);
    CHECK_FALSE(view.stick_left);
    CHECK_FALSE(view.shown());  // nobody has touched this screen
    app.settings.school.stick_hand = StickHand::left;
    app.settings.up_key_pushes = false;
    app.hands.fingers.ever = true;
    pads_view(app, view);
    CHECK(view.stick_left);
    CHECK_FALSE(view.up_pushes);
    CHECK(view.shown());
}
