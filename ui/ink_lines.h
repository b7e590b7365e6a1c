// The ink over the class's picture: lines that are drawn, taken back and wiped away.
#pragma once

#include "ui/room_shown.h"

namespace slopewise {

// A new line, a dot so far. Where there are most_ink_lines, the oldest goes.
void begin_ink(RoomShown& shown, InkPoint at);

// The last line goes on. Points nearer than a step to the one before are left out; a line of most_ink_points
// gives up every second of them, so that it stays whole.
void draw_ink_to(RoomShown& shown, InkPoint at);

void take_back_ink(RoomShown& shown);  // its last line
void wipe_ink(RoomShown& shown);       // all of it; the pointer stays

}  // namespace slopewise
