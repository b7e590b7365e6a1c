// A newer version that waits: told between flights, taken when the user says so, and never while somebody
// flies.
#include <doctest/doctest.h>

#include "tests/ui/test_host.h"
#include "ui/app.h"
#include "ui/make_view.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

constexpr DoWithProgram take_it{DoWithProgram::Wish::take_update};

// Past its first page and the question about the stick, with a newer version waiting.
App told_of_update(TestHost& host) {
    host.kept = R"({"kind": "settings", "stick_sense": "up_key_pushes"})";
    App app = make_app(shipped(), host);
    app.program.update_waits = true;
    return app;
}

bool told(const App& app) { return make_view(app).mirror.screen.find(update_words) != std::string::npos; }

}  // namespace

TEST_CASE("update: the first page and the choices tell of it, other sheets do not") {
    TestHost host;
    App app = told_of_update(host);
    CHECK(app.screen == Screen::choices);
    CHECK(told(app));
    apply(app, OpenFirstPage{}, host);
    CHECK(told(app));
    apply(app, OpenDrills{}, host);
    CHECK_FALSE(told(app));
    app.program.update_waits = false;
    apply(app, GoToChoices{}, host);
    CHECK_FALSE(told(app));
}

TEST_CASE("update: what waits is taken on the user's word, once there is something to take") {
    TestHost host;
    App app = told_of_update(host);
    app.program.update_waits = false;
    apply(app, take_it, host);
    CHECK(host.updates_taken == 0);
    app.program.update_waits = true;
    apply(app, take_it, host);
    CHECK(host.updates_taken == 1);
}

TEST_CASE("update: it is refused in flight, in a pause and on the sheets above a paused flight") {
    TestHost host;
    App app = told_of_update(host);
    apply(app, FlyNow{}, host);
    REQUIRE(app.screen == Screen::flight);
    apply(app, take_it, host);
    pause(app);
    apply(app, take_it, host);
    apply(app, OpenScreenAndHelp{}, host);
    apply(app, OpenAbout{}, host);
    REQUIRE(app.screen == Screen::about);
    apply(app, take_it, host);
    CHECK(host.updates_taken == 0);
    CHECK(app.program.news == "The newer version waits until the flight is over.");
}

TEST_CASE("update: after a flight that was left, and from the sheet about the program, it is taken") {
    TestHost host;
    App app = told_of_update(host);
    apply(app, FlyNow{}, host);
    apply(app, GoToChoices{}, host);
    apply(app, take_it, host);
    CHECK(host.updates_taken == 1);
    apply(app, OpenScreenAndHelp{}, host);
    apply(app, OpenAbout{}, host);
    apply(app, take_it, host);
    CHECK(host.updates_taken == 2);
}

TEST_CASE("update: it is refused while a class is taught") {
    TestHost host;
    App app = told_of_update(host);
    apply(app, OpenClassRoom{}, host);
    REQUIRE(app.room.open);
    apply(app, take_it, host);
    CHECK(host.updates_taken == 0);
}

TEST_CASE("update: the version names the build, where one was stamped") {
    TestHost host;
    const std::string unstamped = make_view(make_app(shipped(), host)).version;
    CHECK(unstamped.find("build") == std::string::npos);
    host.build = "0a1b2c3d";
    CHECK(make_view(make_app(shipped(), host)).version == unstamped + ", build 0a1b2c3d");
}
