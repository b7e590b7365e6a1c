// Reads an aircraft file (JSON, kind "aircraft", pilot units) into the engine's SI data.
#pragma once

#include <string>

#include "base/result.h"
#include "data/json_tree.h"
#include "flight/aircraft.h"

namespace slopewise {

Result<Aircraft> read_aircraft(const JsonNode& root, const std::string& file);

}  // namespace slopewise
