// The way to the whole screen and back: the button, and what it asks of the outside.
#include <doctest/doctest.h>

#include "tests/screens/stage.h"
#include "tests/ui/test_host.h"
#include "ui/app.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

struct FillingHost : TestHost {
    int toggled = 0;
    bool can_fill_screen() override { return true; }
    void toggle_full_screen() override { ++toggled; }
};

}  // namespace

TEST_CASE("full screen: Screen and help offers it where the window can fill the screen, and nowhere else") {
    Stage stage({1280, 720});
    CHECK_FALSE(stage.place_of(Screen::screen_and_help, "screen and help", "Full screen").has_value());
    stage.view.screen_and_help.can_fill_screen = true;
    const Actions asked = press(stage, Screen::screen_and_help, "screen and help", "Full screen");
    CHECK(find<ToggleFullScreen>(asked) != nullptr);
}

TEST_CASE("full screen: the wish reaches the outside once, which has said that it can") {
    FillingHost host;
    App app = make_app(shipped(), host);
    CHECK(app.can_fill_screen);
    apply(app, ToggleFullScreen{}, host);
    CHECK(host.toggled == 1);
    TestHost plain;
    CHECK_FALSE(make_app(shipped(), plain).can_fill_screen);
}
