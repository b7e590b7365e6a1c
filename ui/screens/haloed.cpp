#include "ui/screens/haloed.h"

#include <array>
#include <cmath>

#include "ui/theme.h"

namespace slopewise {
namespace {

void line(ImDrawList* list, std::span<const ImVec2> points, ImU32 colour, float width_px) {
    if (points.size() > 1)
        list->AddPolyline(points.data(), static_cast<int>(points.size()), colour, 0, width_px);
    // Round ends; of a single point, the dot.
    list->AddCircleFilled(points.front(), width_px / 2, colour, 16);
    list->AddCircleFilled(points.back(), width_px / 2, colour, 16);
}

}  // namespace

void haloed_line(ImDrawList* list, std::span<const ImVec2> points, const Stroke& stroke) {
    if (points.empty()) return;
    line(list, points, theme().colour.paper, stroke.width_px + 2 * stroke.halo_px);
    line(list, points, stroke.colour, stroke.width_px);
}

void haloed_ring(ImDrawList* list, ImVec2 centre, float radius_px, const Stroke& stroke) {
    list->AddCircle(centre, radius_px, theme().colour.paper, 48, stroke.width_px + 2 * stroke.halo_px);
    list->AddCircle(centre, radius_px, stroke.colour, 48, stroke.width_px);
}

void haloed_arrow(ImDrawList* list, ImVec2 from, ImVec2 to, float head_px, const Stroke& stroke) {
    const float x = to.x - from.x, y = to.y - from.y, length = std::sqrt(x * x + y * y);
    if (length < head_px) return haloed_line(list, std::array{from}, stroke);
    const ImVec2 way{x / length, y / length};
    const auto at = [&](float back, float aside) {
        return ImVec2{to.x - back * way.x - aside * way.y, to.y - back * way.y + aside * way.x};
    };
    const float half = head_px * 0.5f, halo = stroke.halo_px;
    const ImU32 paper = theme().colour.paper;
    const ImVec2 neck = at(head_px * 0.8f, 0);
    list->AddLine(from, neck, paper, stroke.width_px + 2 * halo);
    list->AddTriangleFilled(at(-1.8f * halo, 0), at(head_px + halo, half + 1.5f * halo),
                            at(head_px + halo, -half - 1.5f * halo), paper);
    list->AddLine(from, neck, stroke.colour, stroke.width_px);
    list->AddTriangleFilled(to, at(head_px, half), at(head_px, -half), stroke.colour);
}

}  // namespace slopewise
