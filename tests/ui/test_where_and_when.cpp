// The sheet "Where and when": what it offers, what is flown after it, and what is kept of it.
#include <doctest/doctest.h>

#include "base/units.h"
#include "tests/ui/test_host.h"
#include "ui/app.h"
#include "ui/make_view.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

bool has(const std::string& text, std::string_view words) { return text.find(words) != std::string::npos; }

}  // namespace

TEST_CASE(
    "where and when: every aircraft at every airfield in every light is flown as chosen, at its own speed") {
    TestHost host;
    App app = make_app(shipped(), host);
    const int airfields = static_cast<int>(app.catalog.runways.size());
    const int aircraft = static_cast<int>(app.catalog.aircraft.size());
    REQUIRE(airfields == 10);
    REQUIRE(aircraft == 3);
    for (int i = 0; i < airfields * aircraft; ++i) {
        WhereAndWhenChoice choice;
        choice.airfield = i % airfields;
        choice.aircraft = i / airfields;
        choice.light = i % 4;
        choice.visibility = 3 - i % 4;
        choice.rain = i % 2 == 0;
        apply(app, SetWhereAndWhen{choice}, host);
        const Scenario scenario = chosen_scenario(app);
        const Aircraft& flown = app.catalog.aircraft[static_cast<std::size_t>(choice.aircraft)];
        const Runway& runway = app.catalog.runways[static_cast<std::size_t>(choice.airfield)];
        CAPTURE(flown.name);
        CAPTURE(runway.name);
        CHECK(scenario.aircraft.id == flown.id);
        CHECK(scenario.surroundings.runway.id == runway.id);
        CHECK(scenario.lesson.target_cas_mps == flown.approach_speed_mps);
        CHECK(scenario.start_trim.flyable);
        app.screen = Screen::choices;
        CHECK(make_view(app).choice.problem.empty());
        CHECK(has(make_view(app).choice.place, flown.name + ", " + runway.name));
        apply(app, OpenWhereAndWhen{}, host);
        const WhereAndWhenView sheet = make_view(app).where_and_when;
        CHECK(sheet.chosen.airfield == choice.airfield);
        CHECK(sheet.chosen.aircraft == choice.aircraft);
        CHECK(sheet.chosen.light == choice.light);
        CHECK(sheet.chosen.visibility == choice.visibility);
        CHECK(sheet.asks_for_ground_lights == (choice.light >= 2));
    }
}

TEST_CASE("where and when: briefing, flight and mirror name what was chosen") {
    TestHost host;
    App app = make_app(shipped(), host);
    WhereAndWhenChoice choice;
    choice.airfield = 0;
    choice.aircraft = 0;
    choice.light = 3;
    choice.visibility = 1;
    choice.ground_lights = false;
    choice.rain = true;
    apply(app, SetWhereAndWhen{choice}, host);
    const std::string light = "at night, dark ground, rain, visibility 5 km";
    apply(app, AnswerStickSense{true}, host);
    apply(app, OpenBriefing{}, host);
    CHECK(has(make_view(app).briefing.place, app.catalog.runways[0].name));
    CHECK(has(make_view(app).mirror.screen, light));
    apply(app, StartFlight{}, host);
    CHECK(has(make_view(app).flight.setup, light));
    CHECK(make_view(app).flight.scene.sky.light == SkyView::Light::night);
}

TEST_CASE("where and when: it is kept, and what is not known any more is told and replaced") {
    TestHost host;
    App app = make_app(shipped(), host);
    WhereAndWhenChoice choice;
    choice.airfield = 1;
    choice.aircraft = 2;
    choice.light = 2;
    choice.visibility = 0;
    choice.overcast = true;
    apply(app, SetWhereAndWhen{choice}, host);
    const Settings kept = parse_settings(host.kept).settings;
    CHECK(kept.where_and_when == app.settings.where_and_when);
    App again = make_app(shipped(), host);
    CHECK(again.settings.where_and_when == app.settings.where_and_when);
    CHECK(again.notice.empty());

    const std::string id = app.settings.where_and_when.runway_id;
    host.kept.replace(host.kept.find("\"" + id + "\""), id.size() + 2, "\"atlantis\"");
    App lost = make_app(shipped(), host);
    CHECK(lost.settings.where_and_when.runway_id == "larkmoor");
    CHECK(lost.settings.where_and_when.aircraft_id == app.settings.where_and_when.aircraft_id);
    CHECK(has(lost.notice, "atlantis"));
}
