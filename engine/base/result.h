// What a reader of foreign data returns: a value, or every problem found (not only the first).
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace slopewise {

// One thing wrong with a file, in words a person can act on.
struct Problem {
    std::string file;     // as the user named it
    int line = 0;         // 1-based; 0 where it cannot be had
    std::string path;     // JSON path, "/wind/speed_kt"
    std::string what;     // what is there: "is 600"
    std::string allowed;  // what may be there: "0 to 60"; may be empty
};

// "assets/lessons/gusts.json:7: /wind/speed_kt is 600; allowed: 0 to 60"
std::string to_text(const Problem& problem);

template <class T>
struct Result {
    std::optional<T> value;
    std::vector<Problem> problems;

    bool ok() const { return value.has_value(); }
};

template <class T>
Result<T> success(T value) {
    return Result<T>{std::move(value), {}};
}

template <class T>
Result<T> failure(std::vector<Problem> problems) {
    return Result<T>{std::nullopt, std::move(problems)};
}

}  // namespace slopewise
