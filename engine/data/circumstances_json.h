// The circumstances of a recording, as a part of its file.
#pragma once

#include <string>

#include "data/fields.h"
#include "record/circumstances.h"

namespace slopewise {

// What a file leaves out keeps its default.
Circumstances read_circumstances(Fields fields);

// A JSON object with what is not at its default; "{}" when all is.
std::string circumstances_text(const Circumstances& circumstances);

}  // namespace slopewise
