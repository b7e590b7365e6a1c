// A recorded attempt again: the window with its shelf as it was seen, the approach from the side, the player.
#include <algorithm>
#include <cmath>

#include "ui/scene/scene.h"
#include "ui/screens/replay_bar.h"
#include "ui/screens/screens.h"
#include "ui/widgets/replay_plot.h"
#include "ui/widgets/shelf.h"
#include "ui/widgets/tag.h"

namespace slopewise {
namespace {

// The arrows, space and the page keys drive the replay, so nothing is focused.
constexpr ImGuiWindowFlags window_flags = ImGuiWindowFlags_NoDecoration | ImGuiWindowFlags_NoMove |
                                          ImGuiWindowFlags_NoSavedSettings | ImGuiWindowFlags_NoBackground |
                                          ImGuiWindowFlags_NoBringToFrontOnFocus |
                                          ImGuiWindowFlags_NoScrollWithMouse | ImGuiWindowFlags_NoNav;

constexpr float shelf_share = 0.32f;  // of the seat's part
// Heights of the shelf in text sizes: with a dial, and where it is too narrow for one, with three readings
// over one another.
constexpr float least_shelf_notes = 6.6f, narrow_shelf_notes = 8.6f;
constexpr float narrow_below_notes = 29;
constexpr float upright_scene_share = 0.7f;  // height to width
constexpr float seat_share = 0.56f;          // of an upright window, beside the side view

struct Area {
    ImVec2 min, max;

    float width() const { return max.x - min.x; }
    float height() const { return max.y - min.y; }
};

float edge_px() { return grid(ImGui::GetIO().DisplaySize.y < 500 ? 1.0f : 1.5f); }

// What was flown, and what must be known to read the picture.
void draw_head(Column& column, const ReplayView& replay) {
    const Palette& c = theme().colour;
    const ImVec2 title = text_extent(TextSize::text, "Replay", true);
    text_at(column.list, {column.left, column.y}, TextSize::text, c.ink, "Replay", true);
    Column beside{
        column.list, column.left + title.x + grid(2), column.width - title.x - grid(2),
        column.y + std::round(0.79f * (title.y - theme().size[static_cast<std::size_t>(TextSize::note)]))};
    paragraph(beside, TextSize::note, c.ink_soft, replay.setup);
    column.y = std::max(column.y + title.y, beside.y);
    if (!replay.trouble.empty()) paragraph(column, TextSize::note, c.attention, replay.trouble, true);
    if (!replay.compared.empty()) paragraph(column, TextSize::note, c.ink, replay.compared);
}

void draw_tags(ImDrawList* list, const Area& scene, const View& view) {
    const Palette& c = theme().colour;
    const float edge = edge_px();
    float y = scene.min.y + edge;
    const auto tag = [&](std::string_view words) {
        if (!words.empty()) y += draw_tag(list, {scene.min.x + edge, y}, words, {c.strip, c.dial_ink}).y;
    };
    tag(view.replay.angle);
    tag(view.flight.status);
    std::string_view caption = view.flight.caption;
    if (caption.empty()) return;
    const float width = marked_tag_width(caption);
    const float x = std::max(scene.min.x, std::round((scene.min.x + scene.max.x - width) / 2));
    draw_tag(list, {x, scene.max.y - line_height(TextSize::note) - 2 * edge}, caption,
             {c.paper, c.attention, true, true});
}

// The shelf takes its share or what its readings need; where that would be half of the seat's part the
// picture has all of it, and the readings stand over the traces.
float shelf_height(const Area& area) {
    const float note = theme().size[static_cast<std::size_t>(TextSize::note)];
    const float least =
        note * (area.width() < narrow_below_notes * note ? narrow_shelf_notes : least_shelf_notes);
    const float height = std::round(std::max(shelf_share * area.height(), least));
    return height > 0.5f * area.height() ? 0.0f : height;
}

// The window, and under it the shelf with the hands where they were; nothing there can be moved.
void draw_seat(ImDrawList* list, const Area& area, const View& view) {
    const float room = area.height() - shelf_height(area);
    const bool upright = area.height() > area.width();
    const float scene_height = upright ? std::min(upright_scene_share * area.width(), room) : room;
    const Area scene{area.min, {area.max.x, std::round(area.min.y + scene_height)}};
    list->PushClipRect(area.min, area.max, true);
    draw_scene(list, scene.min, scene.max, view.flight.scene);
    draw_tags(list, scene, view);
    if (scene.max.y < area.max.y) {
        ImGui::BeginDisabled();
        draw_shelf(list, {area.min.x, scene.max.y}, area.max, view.flight.instruments);
        ImGui::EndDisabled();
    }
    list->PopClipRect();
}

struct Split {
    Area seat, side;
};

Split split(const Area& body) {
    const ImVec2 window = ImGui::GetIO().DisplaySize;
    if (window.x < window.y) {
        const float y = std::round(body.min.y + seat_share * body.height());
        return {{body.min, {body.max.x, y}}, {{body.min.x, y}, body.max}};
    }
    const float x = std::round((body.min.x + body.max.x) / 2);
    return {{body.min, {x, body.max.y}}, {{x, body.min.y}, body.max}};
}

Actions draw_body(ImDrawList* list, const Area& body, const View& view) {
    const ReplayView& replay = view.replay;
    Split parts = split(body);
    if (replay.shows == ReplayShows::seat) parts.seat = body;
    if (replay.shows == ReplayShows::side) parts.side = body;
    if (replay.shows != ReplayShows::side) draw_seat(list, parts.seat, view);
    if (replay.shows == ReplayShows::seat) return {};
    const float edge = edge_px();
    const auto sought = draw_replay_plot(list, {parts.side.min.x + edge, parts.side.min.y + edge / 2},
                                         {parts.side.max.x - edge, parts.side.max.y}, view.flight, replay);
    if (!sought) return {};
    return {DriveReplay{DriveReplay::Wish::seek, *sought}};
}

}  // namespace

Actions draw_replay(const View& view) {
    const ImVec2 window = ImGui::GetIO().DisplaySize;
    ImGui::SetNextWindowPos({0, 0});
    ImGui::SetNextWindowSize(window);
    ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, ImVec2(0, 0));
    ImGui::PushStyleVar(ImGuiStyleVar_WindowBorderSize, 0.0f);
    ImGui::Begin("replay", nullptr, window_flags);
    ImGui::PopStyleVar(2);
    ImDrawList* list = ImGui::GetWindowDrawList();
    list->AddRectFilled({0, 0}, window, theme().colour.paper);

    const float edge = edge_px();
    Column head{list, edge, window.x - 2 * edge, edge};
    draw_head(head, view.replay);
    const float bar_height = replay_bar_height(head.width);
    const Column bar{list, edge, head.width, window.y - bar_height - edge};
    const Area body{{0, std::round(head.y + edge / 2)}, {window.x, std::round(bar.y - edge / 2)}};
    Actions actions = draw_body(list, body, view);
    const Actions driven = draw_replay_bar(bar, view);
    ImGui::End();
    actions.insert(actions.end(), driven.begin(), driven.end());
    return actions;
}

}  // namespace slopewise
