#include "ui/screens/flight_stick.h"

#include <algorithm>
#include <cmath>

#include "ui/widgets/controls.h"

namespace slopewise {
namespace {

constexpr float travel_share = 0.3f;  // of the view's height, from the datum to full stick
constexpr float dead_zone_px = 3;
constexpr double trim_step = 0.02;  // a notch of the wheel

// Gentle near the datum, all the travel at the end (common practice, as for a controller's axis).
double shaped(float share) {
    const double u = std::clamp(static_cast<double>(share), -1.0, 1.0);
    return 0.6 * u + 0.4 * u * u * u;
}

// A light line with a dark edge shows on sky and on ground.
void edged_line(ImDrawList* list, ImVec2 from, ImVec2 to, float width) {
    list->AddLine(from, to, theme().colour.ink, width + 2);
    list->AddLine(from, to, theme().colour.paper, width);
}

void draw_stick(ImDrawList* list, ImVec2 datum, float hand_y, float travel_px) {
    const Palette& c = theme().colour;
    const float half = grid(2.5f);
    const float line = std::max(1.5f, grid(0.25f));
    const float reach = std::clamp(hand_y, datum.y - travel_px, datum.y + travel_px);
    edged_line(list, {datum.x, datum.y - travel_px}, {datum.x, datum.y + travel_px}, line * 0.5f);
    edged_line(list, {datum.x - half, datum.y}, {datum.x + half, datum.y}, line);
    list->AddCircleFilled({datum.x, reach}, grid(1.5f) + 1, c.ink, 32);
    list->AddCircleFilled({datum.x, reach}, grid(1.5f), c.paper, 32);
    list->AddCircleFilled({datum.x, reach}, grid(0.5f), c.accent, 24);
}

}  // namespace

double stick_from(float way_px, float travel_px) {
    const float beyond = std::max(0.0f, std::abs(way_px) - dead_zone_px);
    return shaped(std::copysign(beyond / (travel_px - dead_zone_px), way_px));
}

Actions mouse_stick(ImDrawList* list, ImVec2 min, ImVec2 max, const InstrumentsView& instruments, bool free,
                    UiState& ui) {
    Actions actions;
    const Press press = press_area("stick", min, {max.x - min.x, max.y - min.y});
    const bool holds = free && press.held;
    if (ui.dragging_stick && !holds) {
        actions.emplace_back(MoveStick{0.0});
        ui.dragging_stick = false;
    }
    if (!free) {
        if (press.pressed) ui.looking = false;  // the sheet comes back
        return actions;
    }

    const ImGuiIO& io = ImGui::GetIO();
    if (press.hovered && io.MouseWheel != 0.0f) {
        // The trim wheel: rolled forward it lowers the nose.
        const double trim = instruments.trim - trim_step * static_cast<double>(io.MouseWheel);
        actions.emplace_back(SetTrim{std::clamp(trim, -1.0, 1.0)});
    }
    if (!holds) return actions;
    const ImVec2 datum = io.MouseClickedPos[ImGuiMouseButton_Left];
    ui.dragging_stick = true;
    ui.drag_origin_y = static_cast<double>(datum.y);
    const float travel_px = travel_share * (max.y - min.y);
    actions.emplace_back(MoveStick{stick_from(io.MousePos.y - datum.y, travel_px)});
    draw_stick(list, datum, io.MousePos.y, travel_px);
    return actions;
}

}  // namespace slopewise
