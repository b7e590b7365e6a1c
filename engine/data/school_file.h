// The settings of a school as one file, to be handed from machine to machine.
#pragma once

#include <string>
#include <string_view>

#include "base/result.h"
#include "data/fields.h"
#include "review/school.h"

namespace slopewise {

// JSON of kind "school", units in the keys; what a file leaves out keeps its default. Every problem is
// returned, and then no school: a bad file changes nothing.
Result<School> read_school(std::string_view text, const std::string& file);

// The same of an object within another file, whose problems go to its list; each bad value has its default,
// alone, a bad aircraft none.
School read_school(Fields fields, const std::string& file, std::vector<Problem>& problems);

// All of it, so that read_school gives the same again within the rounding of the units.
std::string school_text(const School& school);

}  // namespace slopewise
