// A class of invented students, each a model pilot of its own skill, and the files that they hand over.
#pragma once

#include <string>
#include <vector>

#include "data/catalog.h"
#include "logbook/student_file.h"

namespace slopewise::test {

struct ClassStudent {
    std::string name;                   // "Heron 07"
    std::string file;                   // "heron-07.jsonl"
    std::vector<IndexRow> rows;         // as that student's own logbook has them, oldest first
    std::vector<std::string> attempts;  // as they are kept

    // The file's lines: whose it is, the rows if wanted, the attempts.
    std::vector<std::string> lines(bool with_rows = true) const;
};

// Five to fifteen short approaches each, of two lessons, some of them aided. `number` from 0.
ClassStudent class_student(int number, const Catalog& catalog);

}  // namespace slopewise::test
