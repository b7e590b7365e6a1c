// Lessons as files: what may be left out of one, and comes back left out.
#include "base/units.h"
#include "data/write_lesson.h"
#include "tests/check.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

struct Again {
    Lesson lesson;
    std::string told;
};

// Written to a file and read from it.
Again again(const Lesson& lesson) {
    const Result<DataEntry> read = read_entry({"x.json", lesson_text(lesson)});
    Again result;
    for (const Problem& problem : read.problems) result.told += to_text(problem) + "\n";
    if (read.ok()) result.lesson = std::get<Lesson>(*read.value);
    return result;
}

}  // namespace

TEST_CASE("lesson files: an error is limited on one side or on both, but not on neither") {
    const auto with_limits = [](double least, double most) {
        Lesson lesson = shipped_scenario("final_calm").lesson;
        lesson.success = {{{Requirement::Kind::path_bias, least, most, 0.0}}, 1, 1};
        return lesson;
    };
    const double half_rad = rad_from_deg(0.5);
    for (const Lesson& lesson : {with_limits(-half_rad, no_limit), with_limits(-no_limit, half_rad),
                                 with_limits(-half_rad, half_rad)}) {
        const Again read = again(lesson);
        CHECK(read.told == "");
        CHECK(lesson_text(read.lesson) == lesson_text(lesson));
    }
    CHECK(
        again(with_limits(-no_limit, no_limit))
            .told.find("/success/requirements/0/least_deg is missing; allowed: it or /most_deg, or both\n") !=
        std::string::npos);
}

TEST_CASE("lesson files: a free approach has no place in the order, and may lead on and hide the airspeed") {
    Lesson lesson = shipped_scenario("final_calm").lesson;
    REQUIRE(lesson.syllabus.group == LessonGroup::free_approach);
    lesson.syllabus.next = "wind_on_final";
    lesson.aids.airspeed_hidden = true;
    const Again read = again(lesson);
    CHECK(read.told == "");
    CHECK(read.lesson.syllabus == lesson.syllabus);
    CHECK(read.lesson.aids == lesson.aids);
}
