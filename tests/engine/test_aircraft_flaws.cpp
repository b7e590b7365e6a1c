// An aircraft file that contradicts itself: each contradiction is told by its place, and a sound one has
// none.
#include "base/units.h"
#include "flight/performance.h"
#include "tests/check.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

// The places of everything that is wrong, in the order told, a space between them.
std::string places(const Aircraft& aircraft) {
    std::string all;
    for (const AircraftFlaw& flaw : aircraft_flaws(aircraft)) {
        CHECK_FALSE(flaw.what.empty());
        all += (all.empty() ? "" : " ") + (flaw.path.empty() ? std::string("whole") : flaw.path);
    }
    return all;
}

}  // namespace

TEST_CASE("aircraft flaws: the shipped aircraft have none") {
    for (const Aircraft& aircraft : shipped().aircraft) {
        CAPTURE(aircraft.id);
        CHECK(places(aircraft).empty());
    }
}

TEST_CASE("aircraft flaws: each contradiction is told, and that alone") {
    const Aircraft sound = shipped_scenario("final_calm").aircraft;
    REQUIRE(sound.flap_count == 3);
    Aircraft slow = sound;
    slow.approach_speed_mps = 1.19 * stall_speed_mps(sound, 2);
    CHECK(places(slow) == "/approach_speed_kt");

    Aircraft stated = sound;
    stated.flaps[1].stated_stall_mps = stall_speed_mps(sound, 1) + mps_from_kt(1.1);
    CHECK(places(stated) == "/flaps/1/stall_speed_kt");
    stated.flaps[1].stated_stall_mps = stall_speed_mps(sound, 1) + mps_from_kt(0.9);
    CHECK(places(stated).empty());

    Aircraft weak_flap = sound;
    weak_flap.flaps[2].max_speed_mps = sound.approach_speed_mps - 0.1;
    CHECK(places(weak_flap) == "/flaps/2/max_speed_kt");

    Aircraft no_use = sound;
    no_use.flaps[1].max_lift = no_use.flaps[0].max_lift;
    CHECK(places(no_use) == "/flaps/1/max_lift");

    Aircraft odd_limits = sound;
    odd_limits.flaps[2].max_speed_mps = odd_limits.flaps[1].max_speed_mps + 1.0;
    CHECK(places(odd_limits) == "/flaps/2/max_speed_kt");

    Aircraft no_margin = sound;
    no_margin.never_exceed_mps = no_margin.normal_max_mps;
    CHECK(places(no_margin) == "/never_exceed_speed_kt");

    Aircraft glider = sound;
    glider.wing.zero_lift_drag = 0.004;
    for (FlapSetting& flap : glider.flaps) flap.drag_increment = 0.0;
    glider.wing.span_m *= 1.6;
    glider.engine.windmill_drag = 0.0;
    CHECK(places(glider) == "whole");  // idle is not steep enough for 3 degrees
}
