// Kept lessons: all come back, one that is damaged takes no other with it, and the limits are told.
#include <doctest/doctest.h>

#include <string>

#include "data/write_lesson.h"
#include "share/own_lessons.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

bool holds(const std::string& text, std::string_view words) { return text.find(words) != std::string::npos; }

}  // namespace

TEST_CASE("own lessons: what is kept comes back, in its order") {
    CHECK(read_own_lessons("", shipped()).lessons.empty());
    CHECK(read_own_lessons(own_lessons_text({}), shipped()).problems.empty());
    const OwnLessons own = read_own_lessons(own_lessons_text(shipped().lessons), shipped());
    CHECK(own.problems.empty());
    REQUIRE(own.lessons.size() == shipped().lessons.size());
    for (std::size_t i = 0; i < own.lessons.size(); ++i)
        CHECK(lesson_text(own.lessons[i]) == lesson_text(shipped().lessons[i]));
}

TEST_CASE("own lessons: a damaged one is told by its number, and the others stay") {
    std::string text = own_lessons_text(std::span(shipped().lessons).first(3));
    const std::size_t second = text.find("\"distance_nm\":", text.find('\n', text.find('\n') + 1));
    REQUIRE(second != std::string::npos);
    text.insert(second + 14, std::size_t{1}, '9');  // 93 or 92 NM
    const OwnLessons own = read_own_lessons(text, shipped());
    REQUIRE(own.lessons.size() == 2);
    CHECK(own.lessons[0].id == shipped().lessons[0].id);
    CHECK(own.lessons[1].id == shipped().lessons[2].id);
    REQUIRE(own.problems.size() == 1);
    CHECK(holds(to_text(own.problems[0]), "Your own lesson 2"));
    CHECK(holds(to_text(own.problems[0]), "/start/distance_nm"));
}

TEST_CASE("own lessons: a text that is none, is of a newer version or too long gives none, and says why") {
    for (const char* text : {"{", "[]", "{\"kind\":\"own_lessons\",\"version\":2,\"lessons\":[]}",
                             "{\"kind\":\"settings\",\"version\":1,\"lessons\":[]}",
                             "{\"kind\":\"own_lessons\",\"version\":1}"}) {
        CAPTURE(text);
        const OwnLessons own = read_own_lessons(text, shipped());
        CHECK(own.lessons.empty());
        CHECK_FALSE(own.problems.empty());
    }
    const OwnLessons many = read_own_lessons(
        own_lessons_text(std::vector<Lesson>(most_own_lessons + 1, shipped().lessons[0])), shipped());
    CHECK(many.lessons.empty());
    REQUIRE_FALSE(many.problems.empty());
    CHECK(holds(to_text(many.problems[0]), "100"));
    CHECK_FALSE(read_own_lessons(std::string(most_own_bytes + 1, ' '), shipped()).problems.empty());
}

TEST_CASE("own lessons: the limits are 100 lessons and 200 kB") {
    std::vector<Lesson> lessons(most_own_lessons, shipped().lessons[0]);
    CHECK(own_lessons_limit(lessons).empty());
    lessons.push_back(lessons.front());
    CHECK(holds(own_lessons_limit(lessons), "At most 100"));
    Lesson wordy = shipped().lessons[0];
    wordy.aim = std::string(190000, 'a');
    CHECK(own_lessons_limit(std::span(&wordy, 1)).empty());
    wordy.aim += std::string(10000, 'a');
    CHECK(holds(own_lessons_limit(std::span(&wordy, 1)), "200 kB"));
}
