// The lessons that somebody wrote, as one document that is kept on their device.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "data/catalog.h"

namespace slopewise {

inline constexpr std::size_t most_own_lessons = 100;
inline constexpr std::size_t most_own_bytes = 200000;

// What could be read, and what could not: one bad lesson does not take the others with it.
struct OwnLessons {
    std::vector<Lesson> lessons;
    std::vector<Problem> problems;
};

std::string own_lessons_text(std::span<const Lesson> lessons);

// An empty text holds none. A document of a newer version, or beyond the limits, is not read at all.
OwnLessons read_own_lessons(std::string_view text, const Catalog& catalog);

// Why these cannot be kept: too many, or too long together; empty when they can.
std::string own_lessons_limit(std::span<const Lesson> lessons);

}  // namespace slopewise
