// A class in one table: a row for each student and lesson. The figures are those of the student's own
// progress sheet of that lesson; nobody is ranked, and nothing here says that anyone is ready to land.
#pragma once

#include <array>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "evidence/class_files.h"

namespace slopewise {

struct ClassRow {
    std::string student;
    std::string lesson, title;      // id; as it is called
    int attempts = 0, unaided = 0;  // that came to their end; of those, with no path guide shown
    // Off the path (rad, high positive) and scatter about that: median of the last five unaided attempts,
    // begun afresh after a long gap (Progress::median_bias_rad, median_scatter_rad); unknown without any.
    double bias_rad = 0.0, scatter_rad = 0.0;
    std::int64_t last_unix_s = 0;  // when the last attempt began; 0: not known
    // The priority fault that came most often in the last three attempts, of equals the latest (last_runs of
    // progress/run_feedback.h, which the student's own sheet tells by): id, empty where none had one.
    std::string fault;
    int fault_times = 0, fault_of = 0;  // so many times, of so many attempts
};

// By student, then by lesson as it is called.
std::vector<ClassRow> class_rows(const ClassFiles& files, const Catalog& catalog);

enum class ClassColumn { student, lesson, attempts, bias, spread, last, fault };
inline constexpr std::array<std::string_view, 7> class_column_names{"student", "lesson", "attempts", "bias",
                                                                    "spread",  "last",   "fault"};

// Bias by its size, faults by their title. What is unknown stands last either way; equals stay as they were.
void sort_class_rows(std::vector<ClassRow>& rows, ClassColumn by, bool falling);

int students_in(std::span<const ClassRow> rows);

// What stands in the fault's column: "2 of 3: Late with the power", so that what is cut off a long one is its
// end; "none" where nothing was found.
std::string fault_words(const ClassRow& row);

// CSV with the caution and the meaning of each column in lines that begin with "#", then the header. Comma,
// decimal point, LF, UTF-8; dates of the day in UTC.
std::string class_csv(std::span<const ClassRow> rows);

}  // namespace slopewise
