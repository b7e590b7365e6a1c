#include "ui/ink_lines.h"

#include <algorithm>
#include <cmath>

namespace slopewise {
namespace {

constexpr float step = 0.003f;  // of the picture: less than half a line's width
// The picture of the flight may reach beyond the canvas that shares are of (screens/ink.h).
constexpr float least = -2, most = 3;

InkPoint inside(InkPoint at) { return {std::clamp(at.x, least, most), std::clamp(at.y, least, most)}; }

void thin_out(std::vector<InkPoint>& points) {
    std::size_t kept = 0;
    for (std::size_t i = 0; i < points.size(); i += 2) points[kept++] = points[i];
    points.resize(kept);
}

}  // namespace

void begin_ink(RoomShown& shown, InkPoint at) {
    if (shown.ink.size() >= most_ink_lines) shown.ink.erase(shown.ink.begin());
    shown.ink.push_back({{inside(at)}});
}

void draw_ink_to(RoomShown& shown, InkPoint at) {
    if (shown.ink.empty()) return;
    std::vector<InkPoint>& points = shown.ink.back().points;
    at = inside(at);
    if (std::abs(at.x - points.back().x) < step && std::abs(at.y - points.back().y) < step) return;
    if (points.size() >= most_ink_points) thin_out(points);
    points.push_back(at);
}

void take_back_ink(RoomShown& shown) {
    if (!shown.ink.empty()) shown.ink.pop_back();
}

void wipe_ink(RoomShown& shown) { shown.ink.clear(); }

}  // namespace slopewise
