// What the two thumb pads of the flight are given.
#pragma once

#include "ui/fingers.h"

namespace slopewise {

struct PadsView {
    Fingers fingers;
    bool wanted = false;      // by the settings
    bool stick_left = false;  // the stick is the left hand's, the power lever the right one's
    bool up_pushes = true;    // a thumb that moves up lowers the nose
    double lever = 0;         // where the power lever is held now, 0 ... 1; the flight has it a tick later

    bool shown() const { return wanted && fingers.ever; }
};

}  // namespace slopewise
