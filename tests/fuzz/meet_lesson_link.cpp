#include "share/lesson_link.h"

#include "data/write_lesson.h"
#include "logbook/text_sum.h"
#include "share/base64url.h"
#include "share/shared_lesson.h"
#include "tests/fixtures.h"
#include "tests/fuzz/demand.h"
#include "tests/fuzz/fly.h"
#include "tests/fuzz/readers.h"
#include "tests/fuzz/shipped_texts.h"

namespace slopewise::test {
namespace {

void meet_link(std::string_view text, std::string_view bytes) {
    const Result<Lesson> read = read_lesson_link(text, shipped());
    if (!demand_answer(read)) return;
    const Result<std::string> link = lesson_link(*read.value);
    if (demand_answer(link)) {
        const Result<Lesson> again = read_lesson_link(*link.value, shipped());
        demand(again.ok(), "a lesson that came by a link can go by one: " +
                               (again.ok() ? std::string() : to_text(again.problems.front())));
        demand(lesson_text(*again.value) == lesson_text(*read.value), "a link brings the same lesson");
    }
    fly_lesson(*read.value, bytes);
}

}  // namespace

// The bytes as a link, and as the lesson within one whose sum agrees.
void meet_lesson_link(std::string_view text) {
    meet_link(text, text);
    meet_link("lesson=1." + text_sum(text) + "." + base64url(text), text);
    const std::optional<std::string> back = bytes_of_base64url(base64url(text));
    demand(back && *back == text, "bytes come back from letters");
}

std::vector<std::string> seeds_of_lesson_link() {
    std::vector<std::string> seeds;
    for (const Lesson& lesson : shipped().lessons)
        if (seeds.size() < 5) seeds.push_back(compact_json(lesson_text(lesson)));
    seeds.push_back("https://example.org/#" + *lesson_link(*find_lesson(shipped(), "final_calm")).value);
    return seeds;
}

}  // namespace slopewise::test
