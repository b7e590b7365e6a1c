// What is said about a lesson, and where what it teaches comes from.
#pragma once

#include <array>
#include <string>
#include <string_view>
#include <vector>

namespace slopewise {

// How sure we are of a source: its text was read; it is quoted from memory; we worked the number out; or many
// do so and nobody could be named.
enum class Certainty { read, recalled, calculated, common_practice };
inline constexpr std::array<std::string_view, 4> certainty_names{"read", "recalled", "calculated",
                                                                 "common_practice"};
inline constexpr std::array<std::string_view, 4> certainty_words{"read", "recalled", "calculated",
                                                                 "common practice, no source"};

struct LessonSource {
    std::string of;        // what it is the source of: "light pictures"
    std::string document;  // "FAA Airplane Flying Handbook"; empty for common practice
    std::string section;   // chapter, table or page; empty: the whole
    Certainty certainty = Certainty::common_practice;

    friend bool operator==(const LessonSource&, const LessonSource&) = default;
};

inline constexpr std::size_t most_mistakes = 3;
inline constexpr std::size_t most_sources = 6;

struct Teaching {
    std::string why;                    // what the lesson is good for
    std::string instructor_says;        // as it is said in the seat beside
    std::vector<std::string> mistakes;  // two or three common ones
    std::vector<LessonSource> sources;

    friend bool operator==(const Teaching&, const Teaching&) = default;
};

// "light pictures: FAA Aeronautical Information Manual, 2-1-2 (read)".
std::string source_words(const LessonSource& source);

}  // namespace slopewise
