// A slip of paper with the approach from the side, while it is flown: the wedge, the lights' sectors, the
// flown path and the aircraft.
#pragma once

#include <imgui.h>

#include "ui/view.h"
#include "ui/widgets/profile_panel.h"

namespace slopewise {

// Fills the rectangle; nothing is drawn where it is too small to be read.
void draw_side_profile(ImDrawList* list, ImVec2 min, ImVec2 max, const SideProfileView& view);

// ---- the lights' sectors, for other pictures from the side ----

// The angle up to which the highest is shown.
double highest_sector_deg(const SideProfileView& view);

// Pixels between two changes of the picture where they are widest apart.
float light_sector_px(const ProfilePanel& panel, const SideProfileView& view);

// Each sector's picture at the panel's left edge, where the sectors are widest apart: the lowest all red.
void draw_light_sectors(ImDrawList* list, const ProfilePanel& panel, const SideProfileView& view,
                        float lamp_px);

}  // namespace slopewise
