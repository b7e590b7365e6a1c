// The readers of foreign bytes: files, links, what is kept on the device, what another window says. Each has
// a function that gives it bytes and demands what must hold of whatever it makes of them.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace slopewise::test {

struct Reader {
    std::string_view name;
    void (*meet)(std::string_view bytes);
    std::vector<std::string> (*seeds)();  // good texts to begin from, made anew by each build
};

std::span<const Reader> readers();

// Null: there is none of that name.
const Reader* find_reader(std::string_view name);

#define SLOPEWISE_READERS(one)                                                                             \
    one(json) one(lesson) one(aircraft) one(runway) one(drill) one(question_set) one(school) one(criteria) \
        one(settings) one(recording) one(kept_attempt) one(kept_track) one(journal) one(index_row)         \
            one(student_file) one(class_file) one(drill_log) one(tally_log) one(lesson_link)               \
                one(own_lessons) one(own_questions) one(room_shown) one(link_message)

#define SLOPEWISE_DECLARE(name)              \
    void meet_##name(std::string_view text); \
    std::vector<std::string> seeds_of_##name();
SLOPEWISE_READERS(SLOPEWISE_DECLARE)
#undef SLOPEWISE_DECLARE

}  // namespace slopewise::test
