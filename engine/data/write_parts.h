// The parts of a lesson's file, written: the other half of read_start, read_happenings, read_practice,
// read_outlook, read_success and read_teaching. What is as a lesson has it without a word is not written.
#pragma once

#include <nlohmann/json.hpp>

#include "lesson/lesson.h"

namespace slopewise {

using Json = nlohmann::ordered_json;

Json start_json(const Start& start);
Json wind_json(const Wind& wind);
Json failure_json(const Failure& failure);
Json outlook_json(const Outlook& outlook);

// Who has which control, the aids, the practice, the traffic, the success criterion, the place in the
// syllabus and the words.
void add_teaching(Json& json, const Lesson& lesson);

}  // namespace slopewise
