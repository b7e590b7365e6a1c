// The instrument shelf under the window: three dials and four levers, laid out to the room there is.
#pragma once

#include <string_view>

#include <imgui.h>

#include "ui/action.h"
#include "ui/view.h"

namespace slopewise {

// How the shelf is wanted.
struct ShelfLook {
    bool back_row = false;  // the airspeed once more, in digits for the last row of a classroom
    bool peeks = false;     // eyes outside: a finger on the dials is a look at them
    bool dark = false;      // nobody looks at them now
    std::string_view look_way = "hold V";  // that looks in
};

// Height that the shelf wants in a window (px): about a quarter.
float shelf_height(float window_width, float window_height);

// Fills the rectangle. The dials shrink with the room; where they would be too small to read, their
// digits stand alone, the airspeed's last. A shelf that is taller than it is wide has its dials over its
// levers. Draw inside a Dear ImGui window: the levers can be dragged.
Actions draw_shelf(ImDrawList* list, ImVec2 min, ImVec2 max, const InstrumentsView& instruments,
                   const ShelfLook& look = {});

}  // namespace slopewise
