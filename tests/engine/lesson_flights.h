// Lessons of the syllabus flown by model pilots, each run as it would begin for a student.
#pragma once

#include <vector>

#include "lesson/variation.h"
#include "success/judge.h"
#include "tests/fixtures.h"

namespace slopewise::test {

struct LessonFlight {
    Scenario scenario;
    Track track;
    Review review;
    JudgedFlight judged;
};

// The lesson as it stands, the student's controls in the hands of this pilot and the others in a good one's.
// A go-around is flown on for 40 seconds.
LessonFlight fly_lesson(const Lesson& lesson, const PilotSkill& student, std::uint64_t seed);

// As many runs as the lesson's criterion counts, the first, the second and so on, varied as it says.
std::vector<LessonFlight> fly_runs(const Lesson& lesson, const PilotSkill& student, std::uint64_t seed);

}  // namespace slopewise::test
