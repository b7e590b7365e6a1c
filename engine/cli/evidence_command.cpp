#include "cli/commands.h"
#include "cli/data_files.h"
#include "evidence/class_table.h"

namespace slopewise::cli {
namespace {

constexpr Option options[] = {
    {"--sort", "COLUMN", "student, lesson, attempts, bias, spread, last or fault; student if not given"},
    {"--falling", "", "the greatest first"}};

void take_file(const std::string& path, ClassFiles& files) {
    ClassFileReader reader = begin_class_file(path);
    const Result<std::string> text = read_file(path, most_student_file_bytes);
    if (!text.ok()) {
        files.problems.insert(files.problems.end(), text.problems.begin(), text.problems.end());
        return;
    }
    for (std::string_view rest = *text.value; !rest.empty() && !reader.given_up;) {
        const std::size_t end = rest.find('\n');
        take_class_line(reader, rest.substr(0, end), shipped_catalog(), Criteria{}, files);
        rest.remove_prefix(end == std::string_view::npos ? rest.size() : end + 1);
    }
    end_class_file(reader, "", files);
}

Outcome evidence(const Arguments& arguments) {
    Numbers numbers(arguments);
    const auto by = static_cast<ClassColumn>(numbers.one_of("--sort", 0, class_column_names));
    if (!numbers.problem().empty()) return complaint(bad_input, "evidence", numbers.problem());
    ClassFiles files;
    for (const std::string& path : arguments.words) take_file(path, files);
    if (files.attempts.empty() && files.problems.empty())
        return complaint(bad_input, "evidence", "none of these attempts came to its end");
    if (files.attempts.empty()) return {bad_input, "", problem_lines(files.problems)};
    std::vector<ClassRow> rows = class_rows(files, shipped_catalog());
    sort_class_rows(rows, by, arguments.has("--falling"));
    Outcome outcome{good, class_csv(rows), ""};
    if (files.problems.empty()) return outcome;
    // What could be read is shown; what could not is named, and the exit code says so.
    outcome.exit_code = bad_input;
    outcome.error =
        problem_lines(files.problems) + "slopewise evidence: these are left out of what is shown\n";
    return outcome;
}

}  // namespace

const Command& evidence_command() {
    static const Command command{
        {"evidence", "FILES...", 1, 10000, "A class in one table, as CSV: a row for each student and lesson.",
         "FILES are students' files or single attempts that the page handed over. A file is measured by the "
         "rows\n"
         "that it brings; attempts without one are flown again.",
         options},
        evidence};
    return command;
}

}  // namespace slopewise::cli
