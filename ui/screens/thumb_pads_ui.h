// What the thumb pads remember between frames.
#pragma once

#include "ui/fingers.h"

namespace slopewise {

struct ThumbPadsUi {
    int power_finger = -1, stick_finger = -1;  // their ids; -1: none rests there
    double power_y = 0;  // pixels: where the thumb on the power lever was in the last frame
    FingerAreas areas;   // where the pads were drawn in the last frame
};

}  // namespace slopewise
