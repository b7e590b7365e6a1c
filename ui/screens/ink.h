// What the instructor draws on the frozen picture, and the pointer that is seen from the back row.
#pragma once

#include <imgui.h>

#include "ui/action.h"
#include "ui/view.h"

namespace slopewise {

// Where ink lies: it is drawn within `min` to `max`, and its shares are of the canvas. The canvas holds the
// same part of the picture in windows of different shapes, so that a line stays where it was drawn.
struct InkSheet {
    ImVec2 min, max;
    ImVec2 canvas_min, canvas_max;
    float picture_height = 0;  // pixels, from which the strokes are sized
};

// Over a view through the windscreen, whose angles follow its width from the middle of its frame: the canvas
// is half as high as wide about that middle. `seen_max`: where what is seen of the frame ends.
InkSheet ink_over_scene(ImVec2 min, ImVec2 max, ImVec2 seen_max, float picture_height);

void draw_ink(ImDrawList* list, const InkSheet& sheet, const RoomShown& shown);

// The mouse or a finger over the sheet: points, and draws while it is pressed.
Actions ink_hand(const InkSheet& sheet, const View& view);

}  // namespace slopewise
