// Reads a drill.
#pragma once

#include "data/json_tree.h"
#include "drill/drill.h"

namespace slopewise {

// JSON, pilot units in the keys. Every problem is returned.
Result<Drill> read_drill(const JsonNode& root, const std::string& file);

}  // namespace slopewise
