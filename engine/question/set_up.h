// Where the flight of a question begins, and a question about a flight as it stands.
#pragma once

#include "lesson/attempt.h"
#include "question/question.h"

namespace slopewise {

// The lesson whose flight, hands off, comes straight to how the question stands and is there after `run_s`:
// in smooth air, with that steady wind. `base`: the aircraft and the runway of the question. The start may
// be one that cannot be flown; check the lesson.
Lesson question_lesson(const Question& question, const Scenario& base);

// A question of this kind about the approach as it is now: its place, its path and speed, its light, and what
// has failed by now. Its wind is the steady one of this height; turbulence is left out.
Question question_here(QuestionKind kind, const Scenario& scenario, const Attempt& attempt);

// "1 NM, 0.6° high, 12 kt fast": how it stands, for the instructor's list.
std::string stands_words(const Question& question);

}  // namespace slopewise
