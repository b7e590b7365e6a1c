// A drill's result as it is kept: one line of JSON.
#pragma once

#include <string>
#include <string_view>

#include "base/result.h"
#include "drill/result.h"

namespace slopewise {

// Ends with a newline; holds no other.
std::string drill_result_line(const DrillResult& result);

// One such line, the newline or not. Figures come back within the rounding written (1e-6 of their unit).
Result<DrillResult> read_drill_result(std::string_view line, const std::string& file);

}  // namespace slopewise
