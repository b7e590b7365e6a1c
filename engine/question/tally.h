// What a class answered: one entry each time a question was revealed, and all of them as a table.
#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <vector>

namespace slopewise {

struct AskedQuestion {
    std::int64_t asked_unix_s = 0;    // revealed; 0: not known
    std::int64_t ahead_of_utc_s = 0;  // the clock on the wall, then
    std::string set_id, set_title;
    int number = 0;  // of the set, from 1
    std::string kind, words;
    std::vector<std::string> choices;
    std::vector<int> first, second;  // hands a choice; none of the second: not counted again
    int right = 0;
};

// A row a choice: when, which set and question, the choice, its hands, whether it was right. With the caution
// as a first line that begins with "#". Comma, LF, UTF-8.
std::string tally_csv(std::span<const AskedQuestion> asked);

// What every column means: file, column, meaning.
std::string tally_dictionary();

}  // namespace slopewise
