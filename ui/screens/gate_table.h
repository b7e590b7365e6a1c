// The gates of one approach as a table: deviations, the lights, power and flap at each height.
#pragma once

#include <span>

#include "ui/view.h"
#include "ui/widgets/paper.h"

namespace slopewise {

// Leaves out flap, then power, where the column is too narrow for all.
void draw_gate_table(Column& column, std::span<const GateRow> gates);

}  // namespace slopewise
