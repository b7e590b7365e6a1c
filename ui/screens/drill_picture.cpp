#include "ui/screens/drill_picture.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "ui/scene/projection.h"
#include "ui/scene/scene.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/replay_plot.h"
#include "ui/widgets/shelf.h"
#include "ui/widgets/side_profile.h"
#include "ui/widgets/tag.h"

namespace slopewise {
namespace {

struct Area {
    ImVec2 min, max;

    float width() const { return max.x - min.x; }
    float height() const { return max.y - min.y; }
};

// Heights of the shelf in text sizes, with a dial and where it is too narrow for one.
constexpr float shelf_notes = 6.6f, narrow_shelf_notes = 8.6f, narrow_below_notes = 29;
constexpr float side_share = 0.36f;  // of the height, where there is a side view
constexpr double least_depression_rad = 0.005;

float note_px() { return theme().size[static_cast<std::size_t>(TextSize::note)]; }

float dials_height(const Area& area) {
    return std::round(note_px() *
                      (area.width() < narrow_below_notes * note_px() ? narrow_shelf_notes : shelf_notes));
}

// From the picture's lower edge up, as much as is shown and has room.
struct Layout {
    Area scene;
    std::optional<Area> dials, side;
};

Layout layout_of(const Area& whole, const DrillView& sheet) {
    Layout layout;
    float bottom = whole.max.y;
    const auto take = [&](float height) {
        const Area taken{{whole.min.x, bottom - height}, {whole.max.x, bottom}};
        bottom -= height;
        return taken;
    };
    if (sheet.side_shown) layout.side = take(std::round(side_share * whole.height()));
    const float dials = dials_height(whole);
    if (sheet.dials_shown && dials < 0.5f * (bottom - whole.min.y)) layout.dials = take(dials);
    layout.scene = {whole.min, {whole.max.x, bottom}};
    return layout;
}

Projection projection_of(const Area& scene, const SceneView& view) {
    return make_projection(
        view.camera, {double(scene.min.x), double(scene.min.y), double(scene.max.x), double(scene.max.y)});
}

// Where the line of sight through a pixel meets the runway's plane, beyond the aim point (m).
std::optional<double> place_under(const Area& scene, const SceneView& view, ImVec2 pixel) {
    const SightAngles sight = sight_angles(projection_of(scene, view), {double(pixel.x), double(pixel.y)});
    if (sight.depression_rad < least_depression_rad) return std::nullopt;
    const double down = std::tan(sight.depression_rad);
    const double x_m = (view.camera.x_m * down + view.camera.z_m) / (down + view.runway.slope);
    return x_m - view.runway.aim_distance_m;
}

// A bar at each side of the runway, and its name beside the one of `side` (-1 left, +1 right).
void draw_place(ImDrawList* list, const Area& scene, const SceneView& view, double beyond_m, int side,
                std::string_view name, ImU32 colour) {
    const Projection projection = projection_of(scene, view);
    const double x_m = view.runway.aim_distance_m + beyond_m, z_m = view.runway.slope * x_m;
    const double edge_m = view.runway.width_m / 2;
    const auto point = [&](double y_m) -> std::optional<ImVec2> {
        const CameraPoint seen = to_camera(projection, {x_m, y_m, z_m});
        if (seen.ahead_m < near_plane_m) return std::nullopt;
        const ScreenPoint at = to_screen(projection, seen);
        return ImVec2{static_cast<float>(at.x_px), static_cast<float>(at.y_px)};
    };
    const auto left = point(-edge_m), right = point(edge_m);
    if (!left || !right) return;
    const float reach = grid(5), line = std::max(2.0f, grid(0.375f));
    const auto bar = [&](ImVec2 from, float to_x) {
        list->AddLine(from, {to_x, from.y}, theme().colour.paper, line + 3);
        list->AddLine(from, {to_x, from.y}, colour, line);
    };
    bar({left->x - grid(1), left->y}, left->x - reach);
    bar({right->x + grid(1), right->y}, right->x + reach);
    const float width = text_extent(TextSize::note, name, true).x + grid(2);
    const float x = side < 0 ? left->x - reach - width : right->x + reach;
    const float y = left->y - line_height(TextSize::note) / 2;
    const ImVec2 place{std::clamp(x, scene.min.x, std::max(scene.min.x, scene.max.x - width)),
                       std::clamp(y, scene.min.y, scene.max.y - line_height(TextSize::note))};
    draw_tag(list, place, name, {theme().colour.paper, colour, true});
}

void draw_places(ImDrawList* list, const Area& scene, const View& view) {
    const DrillView& sheet = view.drill;
    const Palette& c = theme().colour;
    if (sheet.asks_place) draw_place(list, scene, view.flight.scene, sheet.mark_m, 1, "your mark", c.accent);
    if (sheet.true_place_shown)
        draw_place(list, scene, view.flight.scene, sheet.true_place_m, -1, "it was here", c.ink);
}

Actions press_picture(const Area& scene, const View& view) {
    const DrillView& sheet = view.drill;
    if (!sheet.asks_place || sheet.true_place_shown) return {};
    const Press press = press_area("picture", scene.min, {scene.width(), scene.height()});
    hold_sheet(press.held);
    if (!press.held) return {};
    const auto place = place_under(scene, view.flight.scene, ImGui::GetIO().MousePos);
    if (!place) return {};
    return {MovePlaceMark{*place, false}};
}

// Nothing is to be seen there any more.
void draw_gone(ImDrawList* list, const Area& scene, std::string_view words) {
    const Palette& c = theme().colour;
    list->AddRectFilled(scene.min, scene.max, c.band);
    Column column{list, scene.min.x + grid(2), scene.width() - grid(4),
                  std::round((scene.min.y + scene.max.y - line_height(TextSize::text)) / 2)};
    paragraph(column, TextSize::text, c.ink, words, true);
}

Actions draw_side(ImDrawList* list, const Area& area, const View& view) {
    if (!view.drill.replayed) {
        draw_side_profile(list, area.min, area.max, view.flight.side_profile);
        return {};
    }
    const auto sought =
        draw_replay_plot(list, {area.min.x, area.min.y + grid(0.5f)}, area.max, view.flight, view.replay);
    if (!sought) return {};
    return {DriveReplay{DriveReplay::Wish::seek, *sought}};
}

}  // namespace

Actions draw_drill_picture(ImDrawList* list, ImVec2 min, ImVec2 max, const View& view) {
    const DrillView& sheet = view.drill;
    const Layout layout = layout_of({min, max}, sheet);
    list->PushClipRect(min, max, true);
    Actions actions;
    if (!sheet.picture_shown) {
        draw_gone(list, layout.scene, sheet.gone);
    } else {
        list->PushClipRect(layout.scene.min, layout.scene.max, true);
        draw_scene(list, layout.scene.min, layout.scene.max, view.flight.scene);
        draw_places(list, layout.scene, view);
        list->PopClipRect();
        actions = press_picture(layout.scene, view);
    }
    if (layout.dials) {
        ImGui::BeginDisabled();
        draw_shelf(list, layout.dials->min, layout.dials->max, view.flight.instruments);
        ImGui::EndDisabled();
    }
    if (layout.side) {
        const Actions sought = draw_side(list, *layout.side, view);
        actions.insert(actions.end(), sought.begin(), sought.end());
    }
    list->PopClipRect();
    return actions;
}

}  // namespace slopewise
