// What counts as stable as a row of fields with units, ranges and steps, for the instructor to set.
#pragma once

#include "review/criteria.h"
#include "ui/view.h"

namespace slopewise {

CriteriaView criteria_view(const Criteria& criteria);

// Sets the field of that number, counted through all groups of the view, to a value in its unit, taken to the
// nearest that is allowed. A number that is none changes nothing.
void set_criterion(Criteria& criteria, int field, double value);

}  // namespace slopewise
