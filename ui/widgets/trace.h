// Lines of a replayed attempt over the distance to the aim point.
#pragma once

#include <vector>

#include <imgui.h>

#include "ui/view_replay.h"
#include "ui/widgets/profile_panel.h"

namespace slopewise {

using ReplayValue = double (*)(const ReplayPoint& point);

// Where the line goes, up to a tick; points that would fall on the last pixel are left out.
std::vector<ImVec2> trace_line(const ProfilePanel& panel, const std::vector<ReplayPoint>& points,
                               ReplayValue value, double up_to_tick = 1e18);

void draw_solid(ImDrawList* list, const std::vector<ImVec2>& line, ImU32 ink, float width_px);
void draw_dashed(ImDrawList* list, const std::vector<ImVec2>& line, ImU32 ink, float width_px, float dash_px);

}  // namespace slopewise
