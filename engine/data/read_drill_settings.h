// Reads what a drill's cards or its flight are drawn from, by its kind.
#pragma once

#include "data/fields.h"
#include "drill/drill.h"

namespace slopewise {

DrillSettings read_drill_settings(DrillKind kind, Fields fields);

}  // namespace slopewise
