// How a lesson is practised, and the traffic that flies ahead in it.
#pragma once

#include "data/fields.h"
#include "lesson/lesson.h"

namespace slopewise {

Practice read_practice(Fields fields);
Traffic read_traffic(Fields fields);

}  // namespace slopewise
