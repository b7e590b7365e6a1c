// Fingers as they come, and which of them is the mouse: the first one down that is on no thumb pad.
#pragma once

#include <array>

#include "ui/fingers.h"

namespace slopewise {

// How far from where it is a finger counts, since the page was turned under it.
struct FingerShift {
    int id = -1;
    bool turned = false;  // and it has not moved since
    double x = 0, y = 0;  // pixels
};

struct FingerMouse {
    Fingers fingers;
    std::array<FingerShift, most_fingers> shifts{};
    int mouse = -1;     // the id of the finger that is the mouse; -1: none
    FingerAreas areas;  // on which a finger is no mouse
};

enum class FingerEvent {
    down,
    move,
    up,
    lost,  // the browser has taken it away: whatever it held is let go
};

// What the mouse does for it.
enum class MouseEvent { none, move, press, release };

// Takes in what one finger did at a place in layout pixels. A finger beyond the fifth is not heard.
MouseEvent take(FingerMouse& hand, FingerEvent event, int id, double x, double y);

// The page has another size: a finger that rests is suddenly somewhere else on it, though it never moved. For
// whatever it holds it goes on from where it was.
void turn_page(FingerMouse& hand);

// The fingers of this frame; those that came since the last one say so once. One that came and went in
// between is not among them.
Fingers fingers_now(FingerMouse& hand);

}  // namespace slopewise
