// Where a flight begins and in what wind: of a lesson and of each of its set-ups.
#pragma once

#include "data/fields.h"
#include "lesson/lesson.h"

namespace slopewise {

Start read_start(Fields fields);
Wind read_wind(Fields fields);

}  // namespace slopewise
