// What the hand does over the window and on its panel.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <string>

#include "tests/screens/stage.h"
#include "ui/theme.h"

using namespace slopewise;

TEST_CASE("flight: the mouse is a stick with its datum where it was pressed, back at trim when let go") {
    Stage stage({1280, 720});
    const ImVec2 datum{900, 300};
    stage.move_mouse(datum);
    stage.draw(Screen::flight);
    stage.draw(Screen::flight);
    stage.hold_mouse(true);
    stage.draw(Screen::flight);
    stage.move_mouse({datum.x, datum.y + 60});
    const Actions pulled = stage.draw(Screen::flight);
    REQUIRE(find<MoveStick>(pulled) != nullptr);
    CHECK(find<MoveStick>(pulled)->stick > 0.1);
    CHECK(find<MoveStick>(pulled)->stick < 0.5);
    stage.move_mouse({datum.x, datum.y - 400});
    const Actions pushed = stage.draw(Screen::flight);
    REQUIRE(find<MoveStick>(pushed) != nullptr);
    CHECK(find<MoveStick>(pushed)->stick == -1.0);
    stage.hold_mouse(false);
    const Actions let_go = stage.draw(Screen::flight);
    REQUIRE(find<MoveStick>(let_go) != nullptr);
    CHECK(find<MoveStick>(let_go)->stick == 0.0);
    CHECK(find<MoveStick>(stage.draw(Screen::flight)) == nullptr);
}

TEST_CASE("flight: pausing in the middle of a drag lets the stick go") {
    Stage stage({1280, 720});
    stage.move_mouse({900, 300});
    stage.draw(Screen::flight);
    stage.draw(Screen::flight);
    stage.hold_mouse(true);
    stage.draw(Screen::flight);
    REQUIRE(stage.ui.dragging_stick);
    stage.view.flight.paused = true;
    const Actions actions = stage.draw(Screen::flight);
    REQUIRE(find<MoveStick>(actions) != nullptr);
    CHECK(find<MoveStick>(actions)->stick == 0.0);
    CHECK_FALSE(stage.ui.dragging_stick);
}

TEST_CASE("flight: the wheel over the view trims by a small step, forward for nose down") {
    Stage stage({1280, 720});
    stage.move_mouse({900, 300});
    stage.draw(Screen::flight);
    stage.draw(Screen::flight);
    stage.turn_wheel(1);
    const Actions actions = stage.draw(Screen::flight);
    REQUIRE(find<SetTrim>(actions) != nullptr);
    CHECK(find<SetTrim>(actions)->trim == doctest::Approx(stage.view.flight.instruments.trim - 0.02));
}

TEST_CASE("flight: the view takes three quarters of a landscape window, and its buttons are a finger high") {
    for (const ImVec2 size : {ImVec2{1280, 720}, ImVec2{844, 390}, ImVec2{1024, 768}, ImVec2{390, 844}}) {
        Stage stage(size);
        CAPTURE(size_words(size));
        const auto view = stage.place_of(Screen::flight, "flight", "stick");
        const auto pause = stage.place_of(Screen::flight, "flight", "Pause");
        const auto around = stage.place_of(Screen::flight, "flight", "Go around");
        REQUIRE(view.has_value());
        REQUIRE(pause.has_value());
        REQUIRE(around.has_value());
        if (size.x > size.y) CHECK(view->height() >= 0.75f * size.y);
        CHECK(pause->height() >= 44);
        CHECK(around->height() >= 44);
        CHECK(find<TogglePause>(stage.click(Screen::flight, pause->middle())) != nullptr);
        CHECK(find<GoAround>(stage.click(Screen::flight, around->middle())) != nullptr);
    }
}

TEST_CASE("flight: once unscored, the way to the summary is in the corner") {
    Stage stage({844, 390});
    CHECK_FALSE(stage.place_of(Screen::flight, "flight", "Summary").has_value());
    stage.view.flight.scored = false;
    stage.view.flight.status = "Unscored: land or go around";
    CHECK(find<OpenSummary>(press(stage, Screen::flight, "flight", "Summary")) != nullptr);
}

// Rule R1 by touch: the help is held, as the key is (Huet et al. 2009; read in abstract).
TEST_CASE("flight: the path help's button is a finger high, calls while it is held and lets go with it") {
    for (const ImVec2 size : {ImVec2{1280, 720}, ImVec2{844, 390}, ImVec2{1024, 768}, ImVec2{390, 844}}) {
        Stage stage(size);
        CAPTURE(size_words(size));
        const auto place = stage.place_of(Screen::flight, "flight", "Path help");
        REQUIRE(place.has_value());
        CHECK(place->height() >= 44);
        stage.move_mouse(place->middle());
        stage.draw(Screen::flight);
        stage.draw(Screen::flight);
        stage.hold_mouse(true);
        const Actions down = stage.draw(Screen::flight);
        REQUIRE(find<CallHelp>(down) != nullptr);
        CHECK(find<CallHelp>(down)->held);
        CHECK(find<MoveStick>(down) == nullptr);  // the picture under it has no stick then
        stage.hold_mouse(false);
        const Actions up = stage.draw(Screen::flight);
        REQUIRE(find<CallHelp>(up) != nullptr);
        CHECK_FALSE(find<CallHelp>(up)->held);
    }
}

TEST_CASE("flight: the path help is drawn when it is shown, and its button goes when scoring has ended") {
    Stage stage({1280, 720});
    stage.draw(Screen::flight);
    stage.draw(Screen::flight);
    const int without = stage.vertices();
    stage.view.flight.scene.path_help = {1.0, 0.01};
    stage.draw(Screen::flight);
    CHECK(stage.vertices() > without);
    stage.view.flight.scored = false;
    CHECK_FALSE(stage.place_of(Screen::flight, "flight", "Path help").has_value());
}

TEST_CASE("flight: where two share the controls a finger hands over and takes back, and no words meet") {
    for (const ImVec2 size : {ImVec2{1280, 720}, ImVec2{844, 390}, ImVec2{390, 844}, ImVec2{1024, 768}}) {
        CAPTURE(size_words(size));
        Stage stage(size);
        stage.draw(Screen::flight);
        CHECK_FALSE(stage.place_of(Screen::flight, "flight", "Give / take").has_value());
        stage.view.flight.control = "You have power, I have pitch";
        const Actions pressed = press(stage, Screen::flight, "flight", "Give / take");
        CHECK(find<ExchangeControls>(pressed) != nullptr);
        CHECK(words_over_words(stage.glyphs("flight")) == 0);
    }
}
