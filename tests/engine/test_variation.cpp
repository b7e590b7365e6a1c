// What a set-up changes of a lesson, and how what is varied is told.
#include "lesson/variation.h"

#include "base/units.h"
#include "tests/check.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

const Lesson& final_calm() { return *find_lesson(shipped(), "final_calm"); }

}  // namespace

TEST_CASE("variation: everything that may differ from the lesson is told") {
    const Lesson& lesson = final_calm();
    Lesson flown = lesson;
    flown.start.distance_m = m_from_nm(1.5);
    flown.start.offset_rad = rad_from_deg(0.7);
    flown.start.cas_mps = mps_from_kt(85.0);
    flown.failure_count = 1;
    flown.aids.lights = LessonAids::Lights::hidden;
    CHECK(variation_words(lesson, flown) ==
          "start at 1.5 NM, start 0.7\u00b0 high, start at 85 kt, with a failure, lights hidden");
}

TEST_CASE("variation: a start put back on the path is told so") {
    Lesson high = final_calm();
    high.start.offset_rad = rad_from_deg(0.7);
    Lesson flown = high;
    flown.start.offset_rad = 0.0;
    CHECK(variation_words(high, flown) == "start on the path");
}

TEST_CASE("variation: a set-up's failure comes besides the lesson's own, as far as a lesson holds them") {
    Lesson lesson = final_calm();
    SetUp set_up;
    set_up.start = lesson.start;
    set_up.failure = Failure{};
    set_up.failure->kind = Failure::Kind::power_lost;
    lesson.practice.set_ups = {set_up};
    lesson.failure_count = static_cast<int>(most_failures) - 1;
    const Lesson room = with_set_up(lesson, 0);
    CHECK(room.failure_count == static_cast<int>(most_failures));
    CHECK(room.failures.back().kind == Failure::Kind::power_lost);
    lesson.failure_count = static_cast<int>(most_failures);
    const Lesson full = with_set_up(lesson, 0);
    CHECK(full.failure_count == static_cast<int>(most_failures));
    CHECK(full.failures.back().kind == lesson.failures.back().kind);
}

TEST_CASE("flap: a setting that the aircraft does not have is landed with as with its landing flap") {
    Scenario scenario = shipped_scenario("final_calm");
    scenario.lesson.briefed_flap = scenario.aircraft.flap_count;
    CHECK(briefed_flap(scenario) == landing_flap(scenario.aircraft));
}

TEST_CASE("flap: a lesson too slow for its own flap gives the model pilot no attitude for the others") {
    Scenario scenario = shipped_scenario("flapless_final");
    REQUIRE(plan_of(scenario).flap_pitch_rad[2] < 0.0);
    const double height_m = scenario.start_state.z_m / 2.0;
    while (reference_trim(scenario, height_m).flyable) scenario.lesson.target_cas_mps -= mps_from_kt(1.0);
    REQUIRE(solve_trim(scenario.aircraft, scenario.surroundings,
                       {scenario.lesson.target_cas_mps, 2,
                        -scenario.surroundings.runway.lights.nominal_path_rad, height_m})
                .flyable);
    CHECK(plan_of(scenario).flap_pitch_rad[2] == 0.0);
}
