#include "ui/screens/ink.h"

#include <algorithm>
#include <vector>

#include "ui/screens/haloed.h"
#include "ui/theme.h"
#include "ui/widgets/controls.h"

namespace slopewise {
namespace {

// Shares of the picture's height; seen from six heights away (D3 of the readability rules: lines of 0.4 % and
// more).
constexpr float line_share = 0.008f, halo_share = 0.004f, pointer_share = 0.055f;
constexpr float scene_canvas = 0.5f;  // height to width

ImVec2 on_sheet(const InkSheet& sheet, InkPoint at) {
    return {sheet.canvas_min.x + at.x * (sheet.canvas_max.x - sheet.canvas_min.x),
            sheet.canvas_min.y + at.y * (sheet.canvas_max.y - sheet.canvas_min.y)};
}

InkPoint in_shares(const InkSheet& sheet, ImVec2 pixel) {
    return {(pixel.x - sheet.canvas_min.x) / (sheet.canvas_max.x - sheet.canvas_min.x),
            (pixel.y - sheet.canvas_min.y) / (sheet.canvas_max.y - sheet.canvas_min.y)};
}

ImVec2 kept_on(const InkSheet& sheet, ImVec2 pixel) {
    return {std::clamp(pixel.x, sheet.min.x, sheet.max.x), std::clamp(pixel.y, sheet.min.y, sheet.max.y)};
}

}  // namespace

InkSheet ink_over_scene(ImVec2 min, ImVec2 max, ImVec2 seen_max, float picture_height) {
    const float half = scene_canvas * (max.x - min.x) / 2, middle = (min.y + max.y) / 2;
    return {min, seen_max, {min.x, middle - half}, {max.x, middle + half}, picture_height};
}

void draw_ink(ImDrawList* list, const InkSheet& sheet, const RoomShown& shown) {
    if (shown.ink.empty() && !shown.pointing) return;
    const float height = sheet.picture_height;
    const Stroke stroke{theme().colour.accent, std::max(3.0f, line_share * height),
                        std::max(1.5f, halo_share * height)};
    list->PushClipRect(sheet.min, sheet.max, true);
    std::vector<ImVec2> points;
    for (const InkLine& line : shown.ink) {
        points.clear();
        for (const InkPoint& point : line.points) points.push_back(on_sheet(sheet, point));
        haloed_line(list, points, stroke);
    }
    if (shown.pointing) haloed_ring(list, on_sheet(sheet, shown.pointer), pointer_share * height / 2, stroke);
    list->PopClipRect();
}

Actions ink_hand(const InkSheet& sheet, const View& view) {
    using Step = MoveInk::Step;
    Actions actions;
    if (sheet.max.x <= sheet.min.x || sheet.max.y <= sheet.min.y) return actions;
    const ImGuiIO& io = ImGui::GetIO();
    const Press press =
        press_area("picture", sheet.min, {sheet.max.x - sheet.min.x, sheet.max.y - sheet.min.y});
    const bool held = press.held && ImGui::IsMouseDown(ImGuiMouseButton_Left);  // not by a key
    hold_sheet(held);
    const auto step = [&](Step what, ImVec2 pixel) {
        actions.emplace_back(MoveInk{what, in_shares(sheet, kept_on(sheet, pixel))});
    };
    // A mouse that was never moved points at nothing.
    const bool moves = io.MouseDelta.x != 0 || io.MouseDelta.y != 0;
    if (held || (press.hovered && (moves || view.class_picture.shown.pointing)))
        step(Step::point, io.MousePos);
    else if (view.class_picture.shown.pointing) step(Step::leave, io.MousePos);
    if (held && ImGui::IsMouseClicked(ImGuiMouseButton_Left))
        step(Step::begin, io.MouseClickedPos[ImGuiMouseButton_Left]);
    else if (held) step(Step::draw, io.MousePos);
    if (ImGui::IsMouseReleased(ImGuiMouseButton_Left)) step(Step::end, io.MousePos);
    return actions;
}

}  // namespace slopewise
