// A number that is set in steps, on paper.
#pragma once

#include <optional>

#include "ui/widgets/controls.h"

namespace slopewise {

struct StepperWords {
    const char* id = "";    // its identity in the window
    const char* name = "";  // what is set
    std::string_view value, unit;
};

// The name, and a press for less and for more on either side of the value; the name goes above where the row
// is too narrow. Returns the new value, a whole number of steps or an end of the range, when one was pressed.
// In a window its presses are found as "less" and "more" under the stepper's identity.
std::optional<double> stepper(Column& column, const StepperWords& words, double value, double least,
                              double most, double step);

}  // namespace slopewise
