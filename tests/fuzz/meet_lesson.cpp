#include "data/write_lesson.h"
#include "share/lesson_link.h"
#include "tests/fixtures.h"
#include "tests/fuzz/demand.h"
#include "tests/fuzz/fly.h"
#include "tests/fuzz/readers.h"
#include "tests/fuzz/shipped_texts.h"

namespace slopewise::test {

void meet_lesson(std::string_view text) {
    const Result<DataEntry> read = read_entry({"x", text});
    if (!demand_answer(read)) return;
    const auto* lesson = std::get_if<Lesson>(&*read.value);
    if (lesson == nullptr) return;
    const std::string written = lesson_text(*lesson);
    const Result<DataEntry> again = read_entry({"x", written});
    demand(again.ok(), "a lesson that was written is read: " +
                           (again.ok() ? std::string() : to_text(again.problems.front())));
    demand(lesson_text(std::get<Lesson>(*again.value)) == written, "a lesson is written the same again");
    const std::vector<Problem> problems = check_lesson(shipped(), *lesson, "x");
    demand_told(problems);
    if (problems.empty()) fly_lesson(*lesson, text);
}

std::vector<std::string> seeds_of_lesson() { return shipped_texts("lessons"); }

}  // namespace slopewise::test
