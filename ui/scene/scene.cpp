#include "ui/scene/scene.h"

#include <algorithm>
#include <array>

#include "ui/scene/airfield_lights.h"
#include "ui/scene/cockpit.h"
#include "ui/scene/ground.h"
#include "ui/scene/lamps.h"
#include "ui/scene/landmarks.h"
#include "ui/scene/leader.h"
#include "ui/scene/magnifier.h"
#include "ui/scene/path_help.h"
#include "ui/scene/rain.h"
#include "ui/scene/runway_markings.h"
#include "ui/scene/sky.h"
#include "ui/scene/traffic.h"

namespace slopewise {

namespace {

// What is made once for a runway.
struct Place {
    RunwayView runway;
    GroundLayout ground;
    RunwayPicture picture;
    std::vector<PointLight> lights;
};

// As many as stand on one board before a class, and the flight's own.
constexpr std::size_t places_kept = 4;

// A memory, not a state: it holds what the makers return for the runways seen last.
const Place& place_of(const RunwayView& runway) {
    static std::array<Place, places_kept> places;
    static std::array<unsigned, places_kept> seen_at{};
    static unsigned now = 0;
    ++now;
    std::size_t oldest = 0;
    for (std::size_t i = 0; i < places_kept; ++i) {
        if (!places[i].ground.fields.empty() && places[i].runway == runway) {
            seen_at[i] = now;
            return places[i];
        }
        if (seen_at[i] < seen_at[oldest]) oldest = i;
    }
    places[oldest] = {runway, make_ground(runway), make_runway_picture(runway), make_airfield_lights(runway)};
    seen_at[oldest] = now;
    return places[oldest];
}

Painter painter_for(ImDrawList* list, ImVec2 min, ImVec2 max, const SceneView& scene) {
    Painter painter;
    painter.list = list;
    painter.white_uv = ImGui::GetFontTexUvWhitePixel();
    painter.projection = make_projection(scene.camera, {min.x, min.y, max.x, max.y});
    painter.light = light_of(scene.sky);
    painter.grain_px = std::max(0.75, (max.x - min.x) / 1280.0);
    painter.visible = painter.projection.frame;
    painter.visible.bottom_px = world_bottom_y_px(painter.projection, scene);
    return painter;
}

void draw_surfaces(const Painter& painter, const Place& place, const SceneView& scene, double time_s) {
    draw_ground(painter, place.ground);
    draw_runway(painter, place.picture);
    draw_standing(painter, place.ground);
    draw_traffic(painter, place.ground, time_s);
    draw_windsock(painter, place.ground.windsock, scene.sky.headwind_mps, time_s);
}

}  // namespace

void draw_scene(ImDrawList* list, ImVec2 min, ImVec2 max, const SceneView& scene) {
    if (max.x - min.x < 8.0f || max.y - min.y < 8.0f) return;
    const Place& place = place_of(scene.runway);
    const Painter painter = painter_for(list, min, max, scene);
    const double time_s = scene.reduced_motion ? 0.0 : scene.sky.time_s;

    list->PushClipRect(min, {max.x, static_cast<float>(painter.visible.bottom_px) + 1.0f}, true);
    draw_sky(painter);
    const double height_m = scene.camera.z_m - ground_height_m(place.ground, scene.camera.x_m);
    if (lit_ground_in_view(painter, height_m)) draw_surfaces(painter, place, scene, time_s);
    draw_darkness(painter, height_m);
    draw_glare(painter);
    draw_leader(painter, scene.leader, scene.sky.headwind_mps, time_s);
    draw_ground_lights(painter, place.ground, time_s);
    draw_airfield_lights(painter, place.lights, scene.sky.lights_setting);
    draw_lamps(painter, scene);
    if (scene.sky.rain && !scene.reduced_motion) draw_rain(painter, time_s);
    draw_path_help(painter, scene);
    list->PopClipRect();

    list->PushClipRect(min, max, true);
    draw_cockpit(painter, scene);
    if (scene.magnifier) draw_magnifier(painter, scene);
    list->PopClipRect();
}

}  // namespace slopewise
