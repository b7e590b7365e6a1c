#include "ui/widgets/trace.h"

#include <algorithm>
#include <cmath>

namespace slopewise {
namespace {

constexpr float least_way_px = 0.75f;

float way_px(ImVec2 a, ImVec2 b) { return std::max(std::abs(a.x - b.x), std::abs(a.y - b.y)); }

ImVec2 along(ImVec2 from, ImVec2 to, float share) {
    return {from.x + (to.x - from.x) * share, from.y + (to.y - from.y) * share};
}

}  // namespace

std::vector<ImVec2> trace_line(const ProfilePanel& panel, const std::vector<ReplayPoint>& points,
                               ReplayValue value, double up_to_tick) {
    std::vector<ImVec2> line;
    for (const ReplayPoint& point : points) {
        if (point.tick > up_to_tick) break;
        const ImVec2 at{std::clamp(panel.x(point.distance_nm), panel.min.x, panel.max.x),
                        panel.y_inside(value(point))};
        if (line.empty() || way_px(line.back(), at) >= least_way_px) line.push_back(at);
    }
    return line;
}

void draw_solid(ImDrawList* list, const std::vector<ImVec2>& line, ImU32 ink, float width_px) {
    if (line.size() > 1) list->AddPolyline(line.data(), static_cast<int>(line.size()), ink, 0, width_px);
}

void draw_dashed(ImDrawList* list, const std::vector<ImVec2>& line, ImU32 ink, float width_px,
                 float dash_px) {
    float gone_px = 0;  // since the last dash or gap began
    bool dash = true;
    for (std::size_t i = 1; i < line.size(); ++i) {
        const float length = std::hypot(line[i].x - line[i - 1].x, line[i].y - line[i - 1].y);
        for (float at = 0; at < length;) {
            const float piece = std::min(dash_px - gone_px, length - at);
            if (piece < 1e-3f) break;  // what rounding left of this stretch
            if (dash)
                list->AddLine(along(line[i - 1], line[i], at / length),
                              along(line[i - 1], line[i], (at + piece) / length), ink, width_px);
            at += piece;
            gone_px += piece;
            if (gone_px < dash_px - 0.01f) continue;
            gone_px = 0;
            dash = !dash;
        }
    }
}

}  // namespace slopewise
