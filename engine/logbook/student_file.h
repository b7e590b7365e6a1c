// One student's whole logbook as a file: JSON Lines, UTF-8. The first line says whose it is, a second may
// hold the rows of the list, each further line is a kept attempt; a damaged line costs that attempt alone.
// The rows are there so that a class's files need not be flown again to be listed; who takes a file into a
// logbook makes them anew.
#pragma once

#include <functional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "logbook/index_row.h"

namespace slopewise {

struct StudentFile {
    std::string student;            // name or code
    std::vector<Problem> problems;  // of the lines that were refused, told by line
};

// The first line, with its line feed.
std::string student_file_head(std::string_view student);

// The student of such a line; refused when it is none, or of a newer program.
Result<std::string> read_student_file_head(std::string_view line, const std::string& file);

// The line of rows, with its line feed; empty where there are none.
std::string student_rows_line(std::span<const IndexRow* const> rows);
bool looks_like_student_rows(std::string_view line);

// Its rows; those of another version are left out, they are to be made from their attempts. Refused when it
// is damaged.
Result<std::vector<IndexRow>> read_student_rows(std::string_view line, const std::string& file);

bool looks_like_student_file(std::string_view text);

// A whole file held in memory, its attempts handed on one by one, since many are large. Without a good first
// line nothing is read.
StudentFile read_student_file(std::string_view text, const std::string& file,
                              const std::function<void(KeptAttempt)>& each);

}  // namespace slopewise
