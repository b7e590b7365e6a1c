// A set of questions back into JSON, in the form that read_question_set reads.
#pragma once

#include <string>

#include "question/question.h"

namespace slopewise {

// Reading the text gives the same set to the last bit of its values in pilot units.
std::string question_set_text(const QuestionSet& set);

}  // namespace slopewise
