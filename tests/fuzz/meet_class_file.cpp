#include "evidence/class_table.h"
#include "tests/fixtures.h"
#include "tests/fuzz/demand.h"
#include "tests/fuzz/readers.h"
#include "tests/fuzz/sums.h"

namespace slopewise::test {

void meet_class_file(std::string_view text) {
    ClassFiles files;
    ClassFileReader reader = begin_class_file("x");
    while (!text.empty()) {
        const std::string_view line = text.substr(0, text.find('\n'));
        text.remove_prefix(std::min(text.size(), line.size() + 1));
        const bool rows = line.find("\"slopewise_rows\"") != std::string_view::npos;
        take_class_line(reader, rows ? rows_with_sum(line) : attempt_with_sum(line), shipped(), Criteria{},
                        files);
    }
    end_class_file(reader, "", files);
    demand_told(files.problems);
    demand(files.problems.size() <= most_class_problems, "no more is told than can be read");
    demand(!files.attempts.empty() || !files.problems.empty() || files.cut_off > 0,
           "a file that held nothing is told of");
    for (const ClassAttempt& attempt : files.attempts)
        demand(files.ids.contains(attempt.id) && attempt.row.duration_s >= 0.0, "an attempt is counted once");
    demand(class_rows(files, shipped()).size() <= files.attempts.size(),
           "a class's rows are made of attempts");
}

std::vector<std::string> seeds_of_class_file() { return seeds_of_student_file(); }

}  // namespace slopewise::test
