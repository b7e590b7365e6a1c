// Reads a lesson file (JSON, kind "lesson", pilot units).
#pragma once

#include <string>

#include "base/result.h"
#include "data/json_tree.h"
#include "lesson/lesson.h"

namespace slopewise {

// Names of aircraft and runway are not looked up here; the catalog does that.
Result<Lesson> read_lesson(const JsonNode& root, const std::string& file);

}  // namespace slopewise
