#include "ui/screens/class_picture.h"

#include <algorithm>
#include <cmath>

#include "ui/scene/cockpit.h"
#include "ui/scene/projection.h"
#include "ui/scene/scene.h"
#include "ui/screens/ask_board.h"
#include "ui/screens/boards.h"
#include "ui/screens/ink.h"
#include "ui/widgets/shelf.h"
#include "ui/widgets/side_profile.h"
#include "ui/widgets/tag.h"

namespace slopewise {
namespace {

// The dials' least height in text sizes, with a dial and where it is too narrow for one.
constexpr float shelf_notes = 6.6f, narrow_shelf_notes = 8.6f, narrow_below_notes = 29;
// Shares of the picture's height.
constexpr float shelf_share = 0.25f, side_share = 0.34f, most_asked_share = 0.5f;
constexpr float frame_share = 0.42f;  // of the width: three quarters of a window of 16 to 9

bool side_shown(const View& view) {
    return view.class_picture.shown.side_profile && !view.flight.side_profile.flown.empty();
}

struct Area {
    ImVec2 min, max;
};

// From the picture's lower edge up: the dials, then the path from the side, then the view.
struct Layout {
    Area frame;  // of the projection
    Area seen;   // of it: below lies only the glareshield, whose room the others take
    Area side, dials;
};

// A little of the glareshield is enough.
float seen_bottom(const Area& frame, const SceneView& scene) {
    const Projection projection = make_projection(
        scene.camera, {double(frame.min.x), double(frame.min.y), double(frame.max.x), double(frame.max.y)});
    const auto world = static_cast<float>(world_bottom_y_px(projection, scene));
    return std::min(frame.max.y, std::ceil(world + 0.05f * (frame.max.x - frame.min.x)));
}

// Never so low that its words would lie over each other.
float dials_height(float width, float height) {
    const float note = theme().size[static_cast<std::size_t>(TextSize::note)];
    const float least = note * (width < narrow_below_notes * note ? narrow_shelf_notes : shelf_notes);
    return std::round(std::max(shelf_share * height, least));
}

Layout layout_of(ImVec2 min, ImVec2 max, const View& view) {
    const RoomShown& shown = view.class_picture.shown;
    const float height = max.y - min.y;
    const float dials = shown.dials ? dials_height(max.x - min.x, height) : 0.0f;
    const float side = side_shown(view) ? std::round(side_share * height) : 0.0f;
    const float room = max.y - dials - side;
    Layout layout;
    // As tall as in a wide window: what has less room shows its upper part, where the horizon and the runway
    // are.
    layout.frame = {min, {max.x, std::max(room, min.y + frame_share * (max.x - min.x))}};
    const float bottom =
        dials + side > 0 ? std::min(room, seen_bottom(layout.frame, view.flight.scene)) : room;
    layout.seen = {min, {max.x, bottom}};
    const float side_bottom = dials > 0 && side > 0 ? max.y - dials : (side > 0 ? max.y : bottom);
    layout.side = {{min.x, bottom}, {max.x, side_bottom}};
    layout.dials = {{min.x, side_bottom}, max};
    return layout;
}

void draw_names(ImDrawList* list, ImVec2 corner, const View& view) {
    const Palette& c = theme().colour;
    if (!view.class_picture.shown.names) return;
    const ImVec2 size = draw_tag(list, corner, view.flight.setup, {c.strip, c.dial_ink});
    if (!view.flight.caption.empty())
        draw_tag(list, {corner.x, corner.y + size.y}, view.flight.caption, {c.paper, c.ink, true});
}

// Drawn upon: the view through the windscreen alone, or the whole board.
InkSheet ink_sheet(ImVec2 min, ImVec2 max, const View& view) {
    const RoomShown& shown = view.class_picture.shown;
    if (shown.board.kind != BoardShown::Kind::flight) return ink_over_board(min, max, view);
    const Layout layout = layout_of(min, max, view);
    return ink_over_scene(layout.frame.min, layout.frame.max, layout.seen.max, max.y - min.y);
}

Actions draw_flight_picture(ImDrawList* list, ImVec2 min, ImVec2 max, const View& view, bool by_hand) {
    const RoomShown& shown = view.class_picture.shown;
    const Layout layout = layout_of(min, max, view);
    list->PushClipRect(layout.seen.min, layout.seen.max, true);
    draw_scene(list, layout.frame.min, layout.frame.max, view.flight.scene);
    draw_names(list, {min.x + grid(1), min.y + grid(1)}, view);
    list->PopClipRect();
    if (side_shown(view)) draw_side_profile(list, layout.side.min, layout.side.max, view.flight.side_profile);
    if (!shown.dials) return {};
    ImGui::BeginDisabled(!by_hand);
    Actions actions = draw_shelf(list, layout.dials.min, layout.dials.max, view.flight.instruments,
                                 {!by_hand || view.display.projector_text});
    ImGui::EndDisabled();
    return by_hand ? actions : Actions{};
}

void add(Actions& actions, const Actions& more) { actions.insert(actions.end(), more.begin(), more.end()); }

}  // namespace

Actions draw_class_picture(ImDrawList* list, ImVec2 min, ImVec2 max, const View& view, bool by_hand) {
    const RoomShown& shown = view.class_picture.shown;
    Actions actions;
    list->PushClipRect(min, max, true);
    if (shown.black) {
        list->AddRectFilled(min, max, IM_COL32_BLACK);
    } else {
        const float height = max.y - min.y;
        const float asked =
            std::min(ask_board_height(max.x - min.x, shown.ask), std::round(most_asked_share * height));
        const ImVec2 rest{max.x, max.y - asked};
        if (shown.board.kind == BoardShown::Kind::flight)
            add(actions, draw_flight_picture(list, min, rest, view, by_hand));
        else draw_board(list, min, rest, view);
        draw_ask_board(list, {min.x, rest.y}, max, shown.ask);
        const InkSheet sheet = ink_sheet(min, rest, view);
        draw_ink(list, sheet, shown);
        if (by_hand) add(actions, ink_hand(sheet, view));
    }
    list->PopClipRect();
    return actions;
}

}  // namespace slopewise
