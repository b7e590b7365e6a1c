// One student's whole logbook as a file: JSON Lines, UTF-8. The first line says whose it is, each further
// line is a kept attempt; a damaged line costs that attempt alone.
#pragma once

#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "logbook/kept_attempt.h"

namespace slopewise {

struct StudentFile {
    std::string student;            // name or code
    std::vector<Problem> problems;  // of the lines that were refused, told by line
};

// The first line, with its line feed.
std::string student_file_head(std::string_view student);

// The student of such a line; refused when it is none, or of a newer program.
Result<std::string> read_student_file_head(std::string_view line, const std::string& file);

bool looks_like_student_file(std::string_view text);

// A whole file held in memory, its attempts handed on one by one, since many are large. Without a good first
// line nothing is read.
StudentFile read_student_file(std::string_view text, const std::string& file,
                              const std::function<void(KeptAttempt)>& each);

}  // namespace slopewise
