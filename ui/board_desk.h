// Stills and explanations, and the hand that draws over them.
#pragma once

namespace slopewise {

struct BoardDesk {
    double pointer_moved_s = -1e9;  // by the clock of the frames
    bool drawing = false;           // the last line of the ink is not ended
};

}  // namespace slopewise
