#include "ui/scene/airfield_lights.h"

#include "world/runway_lights.h"

namespace slopewise {

namespace {

constexpr double lens_height_m = 0.35;

Rgb colour_of(RunwayLight::Colour colour) {
    switch (colour) {
    case RunwayLight::Colour::white: return rgb_from_bytes(255, 240, 210);
    case RunwayLight::Colour::green: return rgb_from_bytes(54, 226, 132);
    case RunwayLight::Colour::red: return rgb_from_bytes(255, 46, 44);
    }
    return {};
}

}  // namespace

std::vector<PointLight> make_airfield_lights(const RunwayView& runway) {
    std::vector<PointLight> lights;
    const RunwayOutline outline{runway.length_m, runway.width_m, runway.slope, runway.edge_lights,
                                runway.approach_lights};
    for (const RunwayLight& light : make_runway_lights(outline)) {
        lights.push_back({{light.place.x_m, light.place.y_m, light.place.z_m + lens_height_m},
                          colour_of(light.colour),
                          light.intensity_cd});
    }
    return lights;
}

void draw_airfield_lights(const Painter& painter, std::span<const PointLight> lights, double setting) {
    if (setting <= 0) return;
    for (std::size_t i = lights.size(); i-- > 0;) draw_point_light(painter, lights[i], setting);
}

}  // namespace slopewise
