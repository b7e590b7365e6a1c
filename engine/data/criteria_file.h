// The criteria of an instructor as a file.
#pragma once

#include <string>
#include <string_view>

#include "base/result.h"
#include "data/fields.h"
#include "review/criteria.h"

namespace slopewise {

// JSON, units in the keys; what a file leaves out keeps its default. Every problem is returned.
Result<Criteria> read_criteria(std::string_view text, const std::string& file);

// The same of an object within another file, whose problems go to its list.
Criteria read_criteria(Fields fields);

// All of it, so that read_criteria gives the same again within the rounding of the units.
std::string criteria_text(const Criteria& criteria);

}  // namespace slopewise
