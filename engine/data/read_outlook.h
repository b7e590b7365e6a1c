// Reads how a lesson's outside looks.
#pragma once

#include "data/fields.h"
#include "world/outlook.h"

namespace slopewise {

// The "outlook" object. Whatever is left out is a clear day.
Outlook read_outlook(Fields fields);

}  // namespace slopewise
