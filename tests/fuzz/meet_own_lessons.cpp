#include "share/own_lessons.h"

#include "tests/fixtures.h"
#include "tests/fuzz/demand.h"
#include "tests/fuzz/fly.h"
#include "tests/fuzz/readers.h"

namespace slopewise::test {

void meet_own_lessons(std::string_view text) {
    const OwnLessons read = read_own_lessons(text, shipped());
    demand_told(read.problems);
    demand(read.lessons.size() <= most_own_lessons, "no more are kept than may be");
    if (!own_lessons_limit(read.lessons).empty()) return;
    const std::string written = own_lessons_text(read.lessons);
    const OwnLessons again = read_own_lessons(written, shipped());
    demand(again.problems.empty(), "lessons that were kept are read: " +
                                       (again.problems.empty() ? "" : to_text(again.problems.front())));
    demand(own_lessons_text(again.lessons) == written, "lessons are kept the same again");
    if (!read.lessons.empty()) fly_lesson(read.lessons.back(), text);
}

std::vector<std::string> seeds_of_own_lessons() {
    const Lesson* const one =
        find_lesson(shipped(), "final_calm");  // of few set-ups: looking at each takes long
    return {own_lessons_text({one, 1}), own_lessons_text({})};
}

}  // namespace slopewise::test
