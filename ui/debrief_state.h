// What the program keeps from the end of an attempt to the next one's beginning, for what is seen after it.
#pragma once

#include <array>
#include <string>
#include <vector>

#include "progress/attempt_row.h"
#include "progress/sessions.h"

namespace slopewise {

// After an attempt the student thinks back before anything is asked or shown: judging oneself first is what
// trains the finding of errors. The length is a choice, no source.
inline constexpr double blank_s = 5.0;

struct DebriefState {
    double questions_from_s = 0;              // on the frame's clock: until then the screen stays blank
    std::array<int, 3> estimate{-1, -1, -1};  // answers so far: path, speed, stable; -1: none yet
    bool detail_asked = false;                // the whole sheet is wanted, though less is due
    std::string handed_over;                  // the file given last

    // Of the lesson by this student, before this attempt, the oldest first; the logbook's to give.
    int earlier_runs = 0;
    std::vector<AttemptRow> earlier_rows;

    StopHint stop = StopHint::none;  // of this student's session with this attempt
};

}  // namespace slopewise
