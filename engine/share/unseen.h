// Characters in a foreign text that are not seen or turn the order of what is read.
#pragma once

#include <string>
#include <vector>

#include "base/result.h"
#include "data/json_tree.h"

namespace slopewise {

// Appends a problem for every text under the node that has control, format or direction characters, up to 20
// in all.
void find_unseen(const JsonNode& node, const std::string& path, const std::string& from,
                 std::vector<Problem>& problems);

}  // namespace slopewise
