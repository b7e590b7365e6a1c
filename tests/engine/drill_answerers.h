// The shipped drills taken by model students.
#pragma once

#include <string_view>

#include "tests/students/drill_students.h"

namespace slopewise::test {

// ---- cards ----

// Answers every card of a shipped drill, over the calm final.
Quiz take_quiz(std::string_view drill_id, std::uint64_t seed, Answerer answerer);

// ---- flown ----

struct FlownRun {
    FlownDrill flown;
    Attempt attempt;
    Track track;
    DrillResult result;
};
FlownRun fly_drill(std::string_view drill_id, std::uint64_t seed, StudentHands hands);

}  // namespace slopewise::test
