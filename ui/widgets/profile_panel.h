// What every picture of the approach from the side is made of: its scales, the path's wedge, the flown line.
#pragma once

#include <algorithm>
#include <vector>

#include <imgui.h>

#include "ui/view.h"

namespace slopewise {

// A panel with its two scales: distance to the aim point, which lies to the right, and a value upwards.
struct ProfilePanel {
    ImVec2 min, max;
    double far_nm = 3;  // at the left edge; the aim point is at `aim_x`
    float aim_x = 0;
    double low = 0, high = 1;

    float x(double distance_nm) const {
        return aim_x - (aim_x - min.x) * static_cast<float>(distance_nm / far_nm);
    }
    float y(double value) const {
        return max.y - (max.y - min.y) * static_cast<float>((value - low) / (high - low));
    }
    float y_inside(double value) const { return std::clamp(y(value), min.y, max.y); }
};

// Height (ft) over the aim point of a line that rises from it at an angle.
double height_ft(double angle_deg, double distance_nm);

// Half-height of the tolerance at a distance (ft): the wedge's, or the floor where that is more. Above and
// below differ a little, as equal angles do.
struct Tolerance {
    double above_ft = 0, below_ft = 0;
};
Tolerance tolerance_at(const PathView& path, double distance_nm);

// Fills between two curves over the whole distance; each gives the value at a distance (NM).
template <class Upper, class Lower>
void fill_between(ImDrawList* list, const ProfilePanel& panel, ImU32 ink, Upper upper, Lower lower) {
    constexpr int pieces = 72;
    // Neighbouring pieces with soft edges would show their seams.
    const ImDrawListFlags kept = list->Flags;
    list->Flags &= ~ImDrawListFlags_AntiAliasedFill;
    for (int i = 0; i < pieces; ++i) {
        const double a = panel.far_nm * i / pieces, b = panel.far_nm * (i + 1) / pieces;
        list->AddQuadFilled({panel.x(b), panel.y_inside(upper(b))}, {panel.x(a), panel.y_inside(upper(a))},
                            {panel.x(a), panel.y_inside(lower(a))}, {panel.x(b), panel.y_inside(lower(b))},
                            ink);
    }
    list->Flags = kept;
}

// The tolerance about the path as a quiet fill.
void draw_wedge(ImDrawList* list, const ProfilePanel& panel, const PathView& path);

// The two axes as lines; and under a panel its distances, which end with the aim point.
void draw_frame(ImDrawList* list, const ProfilePanel& panel);
void draw_distance_axis(ImDrawList* list, const ProfilePanel& panel);

// The strong line of what was flown; `value` of a point goes up.
template <class Value>
void draw_flown(ImDrawList* list, const ProfilePanel& panel, const std::vector<ProfilePoint>& points,
                float width_px, ImU32 ink, Value value) {
    for (const ProfilePoint& point : points)
        list->PathLineTo({panel.x(point.distance_nm), panel.y_inside(value(point))});
    list->PathStroke(ink, 0, std::max(2.0f, width_px));
}

}  // namespace slopewise
