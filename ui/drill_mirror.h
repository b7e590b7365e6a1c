// The sheets of the drills as plain text. Nothing in it tells an answer before it is given.
#pragma once

#include <string>

#include "ui/view.h"

namespace slopewise {

std::string drills_text(const DrillsView& sheet);
std::string drill_text(const DrillView& sheet);
std::string drill_result_text(const DrillResultView& sheet);

}  // namespace slopewise
