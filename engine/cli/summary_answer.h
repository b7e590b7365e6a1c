// The deviation summary of a flight as JSON and as plain text.
#pragma once

#include <string>

#include "cli/json_text.h"
#include "review/summary.h"

namespace slopewise::cli {

// Appends the summary's keys to an object, units in their names.
void add_summary(Json& json, const Summary& summary, const Track& track);

std::string summary_text(const Summary& summary, const Track& track);

}  // namespace slopewise::cli
