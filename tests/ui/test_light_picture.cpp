// The picture of each kind of lights as the words and the drawings have it.
#include <doctest/doctest.h>

#include "tests/ui/test_host.h"
#include "ui/app.h"
#include "ui/make_view.h"
#include "ui/views.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

Scenario with_lights(LightSite::Kind kind, LightSite::Side side) {
    TestHost host;
    Scenario scenario = chosen_scenario(make_app(shipped(), host));
    scenario.surroundings.runway.lights.kind = kind;
    scenario.surroundings.runway.lights.side = side;
    return make_scenario(scenario.lesson, scenario.aircraft, scenario.surroundings.runway);
}

using Lamps = std::vector<double>;

}  // namespace

TEST_CASE("light picture: a bar on the left is white from the left, one on the right from the right") {
    // AIM 2-1-2: of a PAPI's units the one nearest the runway is set highest and turns white last.
    for (const LightSite::Side side : {LightSite::Side::left, LightSite::Side::both})
        CHECK(picture_of(with_lights(LightSite::Kind::papi, side), 1).white_fraction == Lamps{1, 0, 0, 0});
    CHECK(picture_of(with_lights(LightSite::Kind::papi, LightSite::Side::right), 1).white_fraction ==
          Lamps{0, 0, 0, 1});
    const LightPicture two = picture_of(with_lights(LightSite::Kind::apapi, LightSite::Side::left), 1);
    CHECK(two.white_fraction == Lamps{1, 0});
    CHECK_FALSE(two.stacked);
    CHECK(two.words == "1 white 1 red");
}

TEST_CASE("light picture: a VASI's bars stand one above the other, red over white on the path") {
    // AIM 2-1-2: the near bar turns white first and is seen below the far one; red over white is on the path.
    for (const LightSite::Side side :
         {LightSite::Side::left, LightSite::Side::right, LightSite::Side::both}) {
        const Scenario scenario = with_lights(LightSite::Kind::vasi, side);
        CHECK(picture_of(scenario, 1).white_fraction == Lamps{0, 1});
        CHECK(picture_of(scenario, 1).stacked);
        CHECK(picture_of(scenario, 1).words == "red over white");
        CHECK(picture_of(scenario, 2).words == "white over white");
        CHECK(picture_of(scenario, 0).words == "red over red");
    }
}

TEST_CASE("light picture: the summary has a share for each picture of the airfield's own lights") {
    TestHost host;
    App app = make_app(shipped(), host);
    const auto shares_at = [&](std::string_view runway) {
        app.settings.where_and_when.runway_id = runway;
        apply(app, StartFlight{}, host);
        apply(app, GoAround{}, host);
        while (app.screen == Screen::flight) {
            if (tick_session(*app.flight, quantize(app.hands.at)).scoring_ended) app.screen = Screen::summary;
        }
        return make_view(app).summary;
    };
    const SummaryView papi = shares_at("larkmoor"), apapi = shares_at("hazelcombe"),
                      vasi = shares_at("larkmoor_downhill");
    REQUIRE(papi.light_pictures.size() == 5);
    REQUIRE(apapi.light_pictures.size() == 3);
    REQUIRE(vasi.light_pictures.size() == 3);
    CHECK(apapi.light_pictures[0].picture.white_fraction == Lamps{1, 1});
    CHECK(vasi.light_pictures[1].picture.white_fraction == Lamps{0, 1});
    CHECK(vasi.stacked_lights);
    CHECK_FALSE(apapi.stacked_lights);
}
