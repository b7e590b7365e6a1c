// A class in one table, made from its students' files.
#pragma once

#include <string>
#include <vector>

namespace slopewise {

struct ClassTableView {
    struct Row {
        std::string student, lesson, attempts, bias, spread, last, fault;
    };

    std::vector<Row> rows;
    int sorted_by = 0;  // a column, in the order of Row
    bool falling = false;
    bool reading = false;           // files are being read now
    std::string summary;            // "30 students, 412 attempts, from 30 files"
    std::vector<std::string> news;  // of the files: what was done, what could not be read

    int made_edition = -1;  // of the desk this was made from
};

}  // namespace slopewise
