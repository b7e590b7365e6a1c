// The sheets of the drills, made from the desk's state and the catalog.
#pragma once

#include "ui/view.h"

namespace slopewise {

struct App;

void drills_view(const App& app, DrillsView& view);

// The sheet of one drill, with the picture, the dials and the side view that belong to it.
void drill_view(const App& app, View& view);

DrillResultView drill_result_view(const App& app);

// What the flight screen says of the drill that is flown on it, and what it keeps back; no words where none
// is.
void flown_drill_view(const App& app, FlightView& view);

}  // namespace slopewise
