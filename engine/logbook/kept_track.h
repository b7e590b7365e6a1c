// The track as a part of a kept attempt: whole numbers of small units, since it is drawn and not flown.
#pragma once

#include <string>

#include "data/json_tree.h"
#include "review/track.h"

namespace slopewise {

// A JSON object: columns with their units, how many rows were scored, the rows.
std::string kept_track_text(const Track& track);

// Empty and with problems told when it is not such a track. Figures are within half a unit of what was kept.
Track read_kept_track(const JsonNode& node, const std::string& file, std::vector<Problem>& problems);

}  // namespace slopewise
