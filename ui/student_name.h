// Who flies: a name or a code that the student chose.
#pragma once

#include <string>
#include <string_view>

namespace slopewise {

inline constexpr std::size_t most_student_letters = 40;
inline constexpr std::size_t most_student_bytes = 4 * most_student_letters;  // as UTF-8

// Without what cannot be seen, without blanks at the ends, and of at most 40 letters.
std::string tidy_student(std::string_view name);

// "No name" for an empty one.
std::string student_words(std::string_view name);

}  // namespace slopewise
