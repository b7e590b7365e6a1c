// Continue or go around at the gate, as a table of two by two with this run's cell marked.
#pragma once

#include "ui/view.h"
#include "ui/widgets/paper.h"

namespace slopewise {

void draw_decision(Column& column, const DecisionView& decision);
float decision_height(const DecisionView& decision);

}  // namespace slopewise
