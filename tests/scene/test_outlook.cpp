// The light of the hour and the lamps in it: what is drawn of them, by the laws that say what is seen.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "tests/scene/no_window.h"
#include "ui/scene/airfield_lights.h"
#include "ui/scene/lamps.h"
#include "ui/scene/landmarks.h"
#include "ui/scene/scene.h"
#include "ui/scene/traffic.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

Light light_at(SkyView::Light hour, double visibility_m = 30000, bool ground_lights = true) {
    SkyView sky;
    sky.light = hour;
    sky.visibility_m = visibility_m;
    sky.ground_lights = ground_lights;
    sky.threshold_lux = hour == SkyView::Light::night ? 8e-7 : (hour == SkyView::Light::dusk ? 1e-5 : 1e-4);
    return light_of(sky);
}

double luminance(const Rgb& c) { return 0.2126 * c.r + 0.7152 * c.g + 0.0722 * c.b; }

}  // namespace

// Koschmieder (5 % contrast): at the meteorological visibility a dark thing keeps exp(-3) of its contrast.
TEST_CASE("outlook: at the visibility a twentieth of a thing's contrast is left") {
    for (const double visibility_m : {1500.0, 4000.0, 30000.0}) {
        const Light light = light_at(SkyView::Light::day, visibility_m);
        CHECK(std::abs(clearness(light.haze, visibility_m) - std::exp(-3.0)) < 1e-12);
        // And a thing's own colour is reached at no distance, the air's far beyond.
        const Rgb own{0.2, 0.4, 0.1};
        CHECK(std::abs(seen_colour(light, own, 0).g - 0.4 * light.tint.g) < 1e-12);
        CHECK(std::abs(seen_colour(light, own, 20 * visibility_m).g - light.haze.colour.g) < 1e-6);
    }
}

TEST_CASE("outlook: the hours grow darker, and the black hole has no horizon") {
    const auto sky_low = [](const Light& light) { return luminance(light.sky[0].colour); };
    const Light day = light_at(SkyView::Light::day), dusk = light_at(SkyView::Light::dusk),
                night = light_at(SkyView::Light::night), hole = light_at(SkyView::Light::night, 30000, false);
    CHECK(luminance(day.tint) > 2 * luminance(dusk.tint));
    CHECK(sky_low(dusk) > 4 * sky_low(night));
    CHECK(sky_low(night) > sky_low(hole));
    for (const SkyStop& stop : hole.sky) {
        CHECK(stop.colour.r == hole.haze.colour.r);
        CHECK(stop.colour.b == hole.haze.colour.b);
        CHECK(luminance(stop.colour) < 0.02);  // 8-bit: 5 of 255 at most
    }
    CHECK(night.lamps_lit == 1.0);
    CHECK(hole.lamps_lit == 0.0);
}

// Allard's law, E = I exp(-sigma d) / d^2, worked by hand: 1,000 cd at 2 km in 30 km visibility is
// 1000 * exp(-0.2) / 4e6 = 2.047e-4 lux; above 8e-7 lux by a factor of 255.9, 2.408 decades.
TEST_CASE("outlook: a lamp's decades above the least that is noticed follow Allard's law") {
    const Light night = light_at(SkyView::Light::night);
    CHECK(std::abs(decades_seen(night, 1000, 2000) - 2.408) < 0.001);
    const Light haze = light_at(SkyView::Light::day, 3000);
    CHECK(decades_seen(haze, 1000, 5556) < 0);
    CHECK(decades_seen(haze, 1000, 500) > 0);
}

TEST_CASE("airfield lights: in a picture by night they dim with distance, and grow no nearer than they are") {
    NoWindow imgui;
    const Light night = light_at(SkyView::Light::night);
    double before = 1e9;
    for (const double distance_m : {200.0, 400.0, 900.0, 1900.0, 3700.0}) {
        const double decades = decades_seen(night, 150, distance_m);
        CHECK(decades < before);
        before = decades;
    }
    const std::vector<PointLight> lights = make_airfield_lights(runway());
    CHECK(lights.size() > 70);
}

TEST_CASE("airfield lights: none is drawn when they are off, all are when they are on") {
    NoWindow imgui;
    const auto vertices = [](double setting) {
        SceneView scene = on_path(1852);
        scene.sky.light = SkyView::Light::night;
        scene.sky.ground_lights = false;
        scene.sky.threshold_lux = 8e-7;
        scene.sky.lights_setting = setting;
        scene.lamp_count = 0;
        ImDrawList list(ImGui::GetDrawListSharedData());
        list._ResetForNewFrame();
        draw_scene(&list, {0, 0}, {1280, 547}, scene);
        return list.VtxBuffer.Size;
    };
    const int dark = vertices(0.0), lit = vertices(0.3);
    CHECK(dark < 400);  // the sky, the dark, the nose: not one thing of the country
    // A glow and a point for each light, of 5 vertices at least.
    CHECK(lit - dark > 5 * 70);
}

TEST_CASE("lamps: too faint to be noticed, they are not drawn; brighter, they glow wider but stay apart") {
    NoWindow imgui;
    const Projection p = make_projection(on_path(1852).camera, {0, 0, 1280, 547});
    CHECK_FALSE(lamp_on_screen(p, {300, -30, 0, 1, true, -0.1}).seen);
    CHECK(lamp_on_screen(p, {300, -30, 0, 1, true, 0.1}).seen);
}

// 15 kt and more: level; a calm: hanging; between, in proportion (common practice, no source).
TEST_CASE("windsock: it hangs in a calm and stands from fifteen knots") {
    CHECK(windsock_lift(0) == 0.0);
    CHECK(std::abs(windsock_lift(7.5 * 1852.0 / 3600.0) - 0.5) < 1e-9);
    CHECK(windsock_lift(15 * 1852.0 / 3600.0 + 1e-9) == 1.0);
    CHECK(windsock_lift(30) == 1.0);
}

TEST_CASE("traffic: vehicles keep to the road, on the right of it, and move on steadily") {
    const GroundLayout ground = make_ground(runway());
    const auto now = vehicles_at(ground.traffic, 100.0), later = vehicles_at(ground.traffic, 100.1);
    for (std::size_t i = 0; i < vehicle_count; ++i) {
        CAPTURE(i);
        CHECK(distance_to_m(ground.traffic, now[i].place.x_m, now[i].place.y_m) <
              ground.traffic.half_width_m);
        const double moved_m =
            std::hypot(later[i].place.x_m - now[i].place.x_m, later[i].place.y_m - now[i].place.y_m);
        CHECK(moved_m > 1.0);  // 36 km/h
        CHECK(moved_m < 2.3);  // 83 km/h
    }
}
