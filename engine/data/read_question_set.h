// Reads a set of questions for a class.
#pragma once

#include <string>

#include "data/json_tree.h"
#include "question/question.h"

namespace slopewise {

// Every problem is returned: file, line, path, what it is, what is allowed. What is right is no part of the
// file. Names of runways are checked by the catalog.
Result<QuestionSet> read_question_set(const JsonNode& root, const std::string& file);

}  // namespace slopewise
