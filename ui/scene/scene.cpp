#include "ui/scene/scene.h"

#include <algorithm>

#include "ui/scene/cockpit.h"
#include "ui/scene/ground.h"
#include "ui/scene/lamps.h"
#include "ui/scene/magnifier.h"
#include "ui/scene/runway_markings.h"
#include "ui/scene/sky.h"

namespace slopewise {

namespace {

// What is made once for a runway.
struct Place {
    RunwayView runway;
    GroundLayout ground;
    RunwayPicture picture;
};

bool same(const RunwayView& a, const RunwayView& b) {
    return a.length_m == b.length_m && a.width_m == b.width_m && a.slope == b.slope &&
           a.aim_distance_m == b.aim_distance_m && a.aim_mark_length_m == b.aim_mark_length_m &&
           a.aim_mark_width_m == b.aim_mark_width_m && a.aim_mark_gap_m == b.aim_mark_gap_m &&
           a.designator == b.designator;
}

// A memory, not a state: it holds what `make_ground` and `make_runway_picture` return for the runway.
const Place& place_of(const RunwayView& runway) {
    static Place place;
    if (place.ground.fields.empty() || !same(place.runway, runway)) {
        place = {runway, make_ground(runway), make_runway_picture(runway)};
    }
    return place;
}

}  // namespace

void draw_scene(ImDrawList* list, ImVec2 min, ImVec2 max, const SceneView& scene) {
    if (max.x - min.x < 8.0f || max.y - min.y < 8.0f) return;
    const Place& place = place_of(scene.runway);

    Painter painter;
    painter.list = list;
    painter.white_uv = ImGui::GetFontTexUvWhitePixel();
    painter.projection = make_projection(scene.camera, {min.x, min.y, max.x, max.y});
    painter.haze = haze_for(scene.visibility_m);
    painter.grain_px = std::max(0.75, (max.x - min.x) / 1280.0);
    painter.visible = painter.projection.frame;
    painter.visible.bottom_px = world_bottom_y_px(painter.projection, scene);

    list->PushClipRect(min, {max.x, static_cast<float>(painter.visible.bottom_px) + 1.0f}, true);
    draw_sky(painter, scene.visibility_m);
    draw_ground(painter, place.ground);
    draw_runway(painter, place.picture);
    draw_standing(painter, place.ground);
    draw_lamps(painter, scene);
    list->PopClipRect();

    list->PushClipRect(min, max, true);
    draw_cockpit(painter, scene);
    draw_magnifier(painter, scene);
    list->PopClipRect();
}

}  // namespace slopewise
