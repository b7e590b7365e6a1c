#include "logbook/student_file.h"

#include "tests/fixtures.h"
#include "tests/fuzz/demand.h"
#include "tests/fuzz/readers.h"
#include "tests/fuzz/shipped_texts.h"
#include "tests/fuzz/sums.h"

namespace slopewise::test {
namespace {

void meet_head(std::string_view line) {
    const Result<std::string> head = read_student_file_head(line, "x");
    if (!demand_answer(head)) return;
    const Result<std::string> again = read_student_file_head(student_file_head(*head.value), "x");
    demand(again.ok() && *again.value == *head.value, "a student's name is written the same again");
}

void meet_rows(std::string_view line) {
    const Result<std::vector<IndexRow>> rows = read_student_rows(line, "x");
    if (!demand_answer(rows) || rows.value->empty()) return;
    std::vector<const IndexRow*> each;
    for (const IndexRow& row : *rows.value) each.push_back(&row);
    const Result<std::vector<IndexRow>> again = read_student_rows(student_rows_line(each), "x");
    demand(again.ok() && again.value->size() == each.size(), "rows that were written are read");
}

}  // namespace

void meet_student_file(std::string_view text) {
    std::size_t read = 0;
    const StudentFile file = read_student_file(text, "x", [&](const KeptAttempt&) { ++read; });
    demand_told(file.problems);
    std::string mended;
    while (!text.empty()) {
        const std::string_view line = text.substr(0, text.find('\n'));
        text.remove_prefix(std::min(text.size(), line.size() + 1));
        meet_head(line);
        meet_rows(line);
        meet_rows(rows_with_sum(line));
        mended += (looks_like_student_rows(line) ? rows_with_sum(line) : attempt_with_sum(line)) + "\n";
    }
    std::size_t again = 0;
    demand_told(read_student_file(mended, "x", [&](const KeptAttempt&) { ++again; }).problems);
    demand(again >= read, "sums that agree cost no attempt");
}

std::vector<std::string> seeds_of_student_file() {
    const KeptAttempt one = short_attempt(1), other = short_attempt(2);
    const Scenario scenario = scenario_of(shipped(), one.recording.lesson);
    const IndexRow row = index_row(one, review_kept(one, scenario, Criteria{}));
    const IndexRow* const rows[] = {&row};
    return {student_file_head("Kestrel \"7\"") + student_rows_line(rows) + kept_attempt_text(one) + "\n" +
                kept_attempt_text(other) + "\n",
            student_file_head(""), student_file_head("Heron") + student_rows_line(rows)};
}

}  // namespace slopewise::test
