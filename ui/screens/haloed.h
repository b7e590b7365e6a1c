// Strokes that are seen on any ground: in a colour, with a pale edge about them.
#pragma once

#include <span>

#include <imgui.h>

namespace slopewise {

struct Stroke {
    ImU32 colour = 0;
    float width_px = 2;
    float halo_px = 2;  // about it, on each side
};

void haloed_line(ImDrawList* list, std::span<const ImVec2> points, const Stroke& stroke);
void haloed_ring(ImDrawList* list, ImVec2 centre, float radius_px, const Stroke& stroke);

// With its head at `to`; shorter than its head it is a dot.
void haloed_arrow(ImDrawList* list, ImVec2 from, ImVec2 to, float head_px, const Stroke& stroke);

}  // namespace slopewise
