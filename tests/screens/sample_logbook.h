// The logbook and the progress of an invented student, for drawing them without the engine.
#pragma once

#include "ui/view_logbook.h"

namespace slopewise {

LogbookView sample_logbook(int attempts);
ProgressView sample_progress(int attempts);

}  // namespace slopewise
