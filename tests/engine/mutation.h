// Valid texts changed at random, by a seed: what a reader of foreign bytes must stand.
#pragma once

#include <algorithm>
#include <iterator>
#include <string>
#include <string_view>

#include "base/random.h"

namespace slopewise::test {

inline std::size_t pick(Random& random, std::size_t count) {
    return static_cast<std::size_t>(next_bits(random) % count);
}

// A number that stands in the text, after a random place, becomes something else.
inline void change_number(std::string& text, Random& random) {
    constexpr std::string_view others[] = {
        "-1",   "0.5",  "1e13", "-1e13", "99999999999999999999", "3", "0", "-0", "1e999", "[]", "{}", "null",
        "true", "\"\"", "",     "[[]]"};
    const std::size_t begin = text.find_first_of("0123456789", pick(random, text.size()));
    if (begin == std::string::npos) return;
    const std::size_t end = text.find_first_not_of("0123456789.", begin);
    text.replace(begin, std::min(end, text.size()) - begin, others[pick(random, std::size(others))]);
}

// One change: a byte, a number, a piece left out or said twice, the end cut off.
inline void mutate(std::string& text, Random& random) {
    constexpr std::string_view bytes = "\"\\{}[],:-.0123456789eEtfnu \t\n\r\x01\x7F\xC3\xFF";
    if (text.empty()) return;
    const std::size_t at = pick(random, text.size()), length = 1 + pick(random, 40);
    switch (pick(random, 8)) {
    case 0: text.erase(at, length); break;
    case 1: text.insert(at, text.substr(at, length)); break;
    case 2: text.resize(at); break;
    case 3:
    case 4: text[at] = bytes[pick(random, bytes.size())]; break;
    default: change_number(text, random);
    }
}

// One change, or now and then a few.
inline std::string mutated(std::string text, Random& random) {
    mutate(text, random);
    while (pick(random, 4) == 0) mutate(text, random);
    return text;
}

}  // namespace slopewise::test
