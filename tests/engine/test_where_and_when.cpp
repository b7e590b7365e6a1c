// The same approach in another aircraft, elsewhere, at another hour.
#include "lesson/where_and_when.h"
#include "tests/check.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

TEST_CASE("where and when: each aircraft flies at its own approach speed and mass, with its landing flap") {
    Lesson base = shipped_scenario("final_calm").lesson;
    base.mass_kg = 1000.0;
    for (const Aircraft& aircraft : shipped().aircraft) {
        CAPTURE(aircraft.id);
        const Outlook dusk{.light = Daylight::dusk, .visibility_m = 5000.0};
        const Lesson lesson = lesson_at(base, {aircraft.id, "sandholm", dusk}, aircraft);
        const Scenario scenario = scenario_of(shipped(), lesson);
        CHECK(scenario.aircraft.mass_kg == aircraft.mass_kg);
        CHECK(scenario.surroundings.runway.id == "sandholm");
        CHECK(lesson.target_cas_mps == aircraft.approach_speed_mps);
        CHECK(lesson.start.flap == aircraft.flap_count - 1);
        CHECK(lesson.outlook == dusk);
        CHECK(scenario.start_trim.flyable);
    }
}

TEST_CASE("where and when: the usual aircraft at the usual airfield flies the lesson as it stands") {
    const Lesson base = shipped_scenario("final_calm").lesson;
    const Lesson lesson = lesson_at(base, {}, shipped_scenario("final_calm").aircraft);
    CHECK(lesson.target_cas_mps == base.target_cas_mps);
    CHECK(lesson.start.cas_mps == base.start.cas_mps);
    CHECK(lesson.start.flap == base.start.flap);
    CHECK(lesson.runway_id == base.runway_id);
}
