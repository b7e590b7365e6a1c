// The arrow keys as the hand on a list: which row is chosen.
#pragma once

namespace slopewise {

// -1 for the row above, +1 for the one below, 0 for neither; a key that is held goes on. Call it inside the
// sheet: while it is called, these keys move no focus.
int list_steps();

}  // namespace slopewise
