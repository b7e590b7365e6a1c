// Progress as JSON: the table, the learning curve with its parameters, the hints and the evidence.
#pragma once

#include <string>

#include "progress/progress.h"

namespace slopewise {

std::string progress_json(const Progress& progress);

}  // namespace slopewise
