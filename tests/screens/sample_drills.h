// Invented drills, for drawing their sheets without the engine.
#pragma once

#include "ui/view_drills.h"

namespace slopewise {

DrillsView sample_drills();
DrillView sample_drill_about();
DrillView sample_card();    // lights, to be answered
DrillView sample_place();   // a mark along the runway
DrillView sample_moment();  // a replay with a moment to be marked
DrillView sample_told();    // commands for the pilot
DrillResultView sample_drill_result();

// The card after an answer that was not right.
DrillView revealed(DrillView sheet);

}  // namespace slopewise
