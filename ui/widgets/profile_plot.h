// The flown approach from the side, as a textbook prints it: path in its wedge, lights, airspeed under it.
//
// One distance axis for all three: the aim point at the right, the approach coming from the left.
#pragma once

#include <vector>

#include <imgui.h>

#include "ui/view.h"
#include "ui/widgets/profile_panel.h"

namespace slopewise {

void draw_profile(ImDrawList* list, ImVec2 min, ImVec2 max, const SummaryView& summary);

// Where the light picture changed, the first picture included; flickers shorter than a moment are left out.
struct PictureChange {
    double distance_nm = 0, height_ft = 0;
    LightPicture picture;
};
std::vector<PictureChange> picture_changes(const std::vector<ProfilePoint>& profile, bool stacked = false);

}  // namespace slopewise
