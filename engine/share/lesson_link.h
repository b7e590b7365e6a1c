// A whole lesson as a short text that an address carries after its '#', so that it needs no server:
//
//   lesson=1.0f3c9a61d27be845.eyJraW5kIjoibGVzc29uIiwi...
//          |  checksum          the lesson's JSON in base64url
//          format
//
// Aircraft and runway are named, not carried: they ship with the program.
#pragma once

#include <string>
#include <string_view>

#include "base/result.h"
#include "data/catalog.h"

namespace slopewise {

// Longer ones are refused. Addresses of 8,000 octets are what RFC 9110, section 4.1, asks everyone to take
// (read).
inline constexpr std::size_t most_link_letters = 8000;

// A newer program may write another format; ours is this one.
inline constexpr int lesson_link_format = 1;

inline constexpr std::string_view lesson_link_key = "lesson=";

// The text with its key. A problem when the lesson is too long for a link; it can go as a file then.
Result<std::string> lesson_link(const Lesson& lesson);

// Whether a text looks like a link with a lesson at all, whole address or not.
bool looks_like_lesson_link(std::string_view text);

// The lesson, checked against the catalog. `text` may be the whole address, or what stands after its '#',
// with blanks about it. It is refused, with every problem, when it is too long, of a newer format, not
// base64url, damaged (its checksum is another; it guards against accidents, not against intent), or holds no
// good lesson.
Result<Lesson> read_lesson_link(std::string_view text, const Catalog& catalog);

}  // namespace slopewise
