// A lesson that comes from somebody else, in a link, a file or what was kept: taken in only when it passes
// every check that a shipped one passes.
#pragma once

#include <string>
#include <string_view>

#include "base/result.h"
#include "data/catalog.h"
#include "data/json_tree.h"

namespace slopewise {

// Reads JSON of at most 1 MiB. Every problem is returned: of the reader, of the catalog, and of words with
// characters that are not seen or turn the order of what is read (control and direction characters).
Result<Lesson> read_shared_lesson(std::string_view json, const std::string& from, const Catalog& catalog);

// The same of what is parsed already.
Result<Lesson> read_shared_lesson(const JsonNode& node, const std::string& from, const Catalog& catalog);

// The JSON without the blanks and line ends between its parts.
std::string compact_json(std::string_view json);

}  // namespace slopewise
