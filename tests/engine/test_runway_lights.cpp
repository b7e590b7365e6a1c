// Runway lights: where the standards put them. The sources stand in runway_lights.h.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <vector>

#include "world/runway_lights.h"

using namespace slopewise;

namespace {

std::vector<RunwayLight> of_colour(const std::vector<RunwayLight>& lights, RunwayLight::Colour colour) {
    std::vector<RunwayLight> found;
    for (const RunwayLight& light : lights) {
        if (light.colour == colour) found.push_back(light);
    }
    return found;
}

}  // namespace

TEST_CASE("runway lights: none where there are none") {
    CHECK(make_runway_lights({1500, 30, 0, false, false}).empty());
}

TEST_CASE("runway lights: edge lights stand in pairs, evenly, at most 60 m apart, white from end to end") {
    for (const double length_m : {700.0, 1500.0, 2500.0}) {
        CAPTURE(length_m);
        std::vector<RunwayLight> white =
            of_colour(make_runway_lights({length_m, 30, 0, true, false}), RunwayLight::Colour::white);
        REQUIRE(white.size() % 2 == 0);
        double before_m = 0;
        for (std::size_t i = 0; i < white.size(); i += 2) {
            CHECK(white[i].place.x_m == white[i + 1].place.x_m);
            CHECK(white[i].place.y_m == -white[i + 1].place.y_m);
            CHECK(std::abs(std::abs(white[i].place.y_m) - 15.0) <=
                  3.0);  // not more than 3 m outside the edge
            CHECK(white[i].place.x_m - before_m <= 60.0 + 1e-9);
            before_m = white[i].place.x_m;
        }
        CHECK(length_m - before_m <= 60.0 + 1e-9);
    }
}

TEST_CASE("runway lights: at least six green across the threshold, six red across the end") {
    for (const double width_m : {18.0, 30.0, 45.0}) {
        CAPTURE(width_m);
        const std::vector<RunwayLight> lights = make_runway_lights({1500, width_m, 0, true, false});
        const auto green = of_colour(lights, RunwayLight::Colour::green),
                   red = of_colour(lights, RunwayLight::Colour::red);
        CHECK(green.size() >= 6);
        CHECK(red.size() >= 6);
        for (const RunwayLight& light : green) {
            CHECK(std::abs(light.place.x_m) <= 3.0);
            CHECK(std::abs(light.place.y_m) <= width_m / 2 + 1e-9);
        }
        for (const RunwayLight& light : red) CHECK(std::abs(light.place.x_m - 1500) <= 3.0);
    }
}

TEST_CASE("runway lights: the approach has a row every 60 m out to 420 m, and a bar 30 m wide at 300 m") {
    const std::vector<RunwayLight> lights = make_runway_lights({1500, 30, 0, false, true});
    int on_axis = 0;
    double widest_m = 0;
    for (const RunwayLight& light : lights) {
        CHECK(light.place.x_m >= -420.0);
        CHECK(light.place.x_m <= -60.0);
        on_axis += light.place.y_m == 0.0 ? 1 : 0;
        if (light.place.y_m != 0.0) CHECK(light.place.x_m == -300.0);
        widest_m = std::max(widest_m, 2 * std::abs(light.place.y_m));
    }
    CHECK(on_axis == 7);
    CHECK(widest_m == 30.0);
}

TEST_CASE("runway lights: they follow the slope of the runway and the level before it") {
    for (const RunwayLight& light : make_runway_lights({700, 18, 0.02, true, true}))
        CHECK(std::abs(light.place.z_m - 0.02 * std::clamp(light.place.x_m, 0.0, 700.0)) < 1e-9);
}

// How much the setting falls at dusk and night is common practice, no source: that it falls is what counts.
TEST_CASE("runway lights: they are turned down as it gets dark, and never out") {
    CHECK(brightness_setting(Background::day) == 1.0);
    CHECK(brightness_setting(Background::dusk) < brightness_setting(Background::day));
    CHECK(brightness_setting(Background::night) < brightness_setting(Background::dusk));
    CHECK(brightness_setting(Background::night) > 0.0);
}
