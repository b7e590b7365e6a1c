// Reads a runway file (JSON, kind "runway").
#pragma once

#include <string>

#include "base/result.h"
#include "data/json_tree.h"
#include "world/runway.h"

namespace slopewise {

// The aim distance may be left out: then it is the standard's for the length (world/runway.h).
Result<Runway> read_runway(const JsonNode& root, const std::string& file);

}  // namespace slopewise
