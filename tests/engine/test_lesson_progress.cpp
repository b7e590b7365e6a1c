// What is known of a student's attempts at the lessons, and which lesson comes next.
#include "progress/lesson_progress.h"

#include "base/units.h"
#include "tests/check.h"

using namespace slopewise;

namespace {

Lesson lesson(const std::string& id, int place, const std::string& next) {
    Lesson made;
    made.id = id;
    made.syllabus = {LessonGroup::core, place, next, ""};
    made.success.requirements = {Requirement{}};
    made.success.passes = 3;
    made.success.runs = 4;
    return made;
}

AttemptRow run(const std::string& lesson, bool met, bool unaided = true) {
    AttemptRow row;
    row.lesson = lesson;
    row.criterion_met = met;
    row.unaided = unaided;
    return row;
}

}  // namespace

// Rule R5: the guidance hypothesis, Salmoni, Schmidt & Walter 1984 (recalled): only what is done without help
// shows what was learned.
TEST_CASE("lesson progress: the last unaided runs count, aided ones and other lessons do not") {
    const Lesson one = lesson("one", 1, "");
    const std::vector<AttemptRow> rows{run("one", false), run("one", true),         run("two", true),
                                       run("one", true),  run("one", false, false), run("one", true)};
    const LessonProgress progress = lesson_progress(one, rows);
    CHECK(progress.flown == 5);
    CHECK(progress.unaided == 4);
    CHECK(progress.runs.met == 3);
    CHECK(progress.runs.counted == 4);
    CHECK(progress.runs.reached);
    CHECK_FALSE(lesson_progress(one, std::span(rows).first(5)).runs.reached);
}

// Rule R9: Wightman and Sistrunk 1987, Human Factors 29 (abstract read): the end first, then the whole.
TEST_CASE("lesson progress: learned from the end backwards, only runs of the whole count") {
    Lesson chain = lesson("chain", 1, "");
    chain.practice.chain_m = {m_from_nm(1.0), m_from_nm(2.0)};
    std::vector<AttemptRow> rows{run("chain", true), run("chain", true)};
    CHECK(lesson_progress(chain, rows).chain_step == 1);
    CHECK(lesson_progress(chain, rows).runs.counted == 0);
    for (int i = 0; i < 3; ++i) rows.push_back(run("chain", true));
    CHECK(lesson_progress(chain, rows).runs.counted == 3);
    CHECK(lesson_progress(chain, rows).runs.reached);
}

TEST_CASE("next lesson: followed from what was met last, past what is met, and the first where nothing is") {
    std::vector<Lesson> lessons{lesson("one", 1, "two"), lesson("two", 2, "three"), lesson("three", 3, "")};
    lessons[0].syllabus.drill = "cards";
    CHECK(next_lesson(lessons, {}, {}) == 0);
    const std::vector<std::string> drills{"cards"};
    CHECK(next_lesson(lessons, {}, drills) == 1);
    std::vector<AttemptRow> rows(3, run("two", true));
    CHECK(next_lesson(lessons, rows, {}) == 2);  // the drill was never done, and nothing is locked
    rows.insert(rows.end(), 3, run("three", true));
    CHECK(next_lesson(lessons, rows, drills) == -1);
}

TEST_CASE("next lesson: what was met last counts, wherever it stands, and an aided run meets nothing") {
    const std::vector<Lesson> lessons{lesson("one", 1, "two"), lesson("two", 2, "three"),
                                      lesson("three", 3, "")};
    std::vector<AttemptRow> rows(3, run("two", true));
    rows.insert(rows.end(), 3, run("one", true));
    rows.push_back(run("two", true, false));
    CHECK(next_lesson(lessons, rows, {}) == 2);  // after "one" comes "two", which is met
    rows.push_back(run("one", true, false));
    CHECK(next_lesson(lessons, rows, {}) == 2);
}

TEST_CASE("next lesson: an approach outside the order is never next, and leads to none") {
    std::vector<Lesson> lessons{lesson("free", 0, "two"), lesson("one", 1, "two"), lesson("two", 2, "")};
    CHECK(next_lesson(lessons, {}, {}) == 1);
    const std::vector<AttemptRow> rows(3, run("free", true));
    CHECK(next_lesson(lessons, rows, {}) == 1);
}

TEST_CASE("next lesson: an order that goes in a circle ends when all of it is met") {
    const std::vector<Lesson> lessons{lesson("one", 1, "two"), lesson("two", 2, "one")};
    std::vector<AttemptRow> rows(3, run("one", true));
    CHECK(next_lesson(lessons, rows, {}) == 1);
    rows.insert(rows.end(), 3, run("two", true));
    CHECK(next_lesson(lessons, rows, {}) == -1);
}
