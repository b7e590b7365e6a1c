// What a lesson asks for.
#pragma once

#include "data/fields.h"
#include "lesson/success.h"

namespace slopewise {

Success read_success(Fields fields);

}  // namespace slopewise
