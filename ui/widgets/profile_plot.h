// The flown approach from the side, as a textbook prints it: path in its wedge, lights, airspeed under it.
//
// One distance axis for all three: the aim point at the right, the approach coming from the left.
#pragma once

#include <vector>

#include <imgui.h>

#include "ui/view.h"

namespace slopewise {

void draw_profile(ImDrawList* list, ImVec2 min, ImVec2 max, const SummaryView& summary);

// Half-height of the tolerance at a distance (ft): the wedge's, or the floor where that is more. Above and
// below differ a little, as equal angles do.
struct Tolerance {
    double above_ft = 0, below_ft = 0;
};
Tolerance tolerance_at(const SummaryView& summary, double distance_nm);

// Where the light picture changed, the first picture included; flickers shorter than a moment are left out.
struct PictureChange {
    double distance_nm = 0, height_ft = 0;
    LightPicture picture;
};
std::vector<PictureChange> picture_changes(const std::vector<ProfilePoint>& profile);

}  // namespace slopewise
