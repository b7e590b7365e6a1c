// The path help's bar: where it falls in the picture.
#include <doctest/doctest.h>

#include <cmath>

#include "tests/check.h"
#include "ui/scene/path_help.h"

using namespace slopewise;

namespace {

constexpr double degree = 3.14159265358979323846 / 180.0;

// The eye at a distance from the aim point on a path of so many degrees, looking at the horizon.
SceneView seen_from(double distance_m, double path_deg) {
    SceneView scene;
    scene.runway.length_m = 1500;
    scene.runway.width_m = 30;
    scene.runway.aim_distance_m = 300;
    scene.camera = {300 - distance_m, 0, distance_m * std::tan(path_deg * degree), 0, 40 * degree};
    scene.lamp_count = 1;
    scene.lamps[0].y_m = -40;
    scene.path_help.opacity = 1;
    return scene;
}

PathHelpBar bar_of(const SceneView& scene) {
    return path_help_bar(make_projection(scene.camera, {0, 0, 1280, 540}), scene);
}

}  // namespace

// Geometry: seen from a 3 degree path the aim point lies 3 degrees below the horizon at every distance.
TEST_CASE(
    "path help: with nothing to mend the bar is level with the aim point, three degrees below the horizon") {
    for (const double distance_m : {1200.0, 3000.0, 5500.0}) {
        CAPTURE(distance_m);
        const SceneView scene = seen_from(distance_m, 3.0);
        const PathHelpBar bar = bar_of(scene);
        const Projection projection = make_projection(scene.camera, {0, 0, 1280, 540});
        REQUIRE(bar.seen);
        CHECK_NEAR(bar.bar_px, bar.aim_px, 1e-9);
        CHECK_NEAR(bar.aim_px, elevation_to_y_px(projection, -3.0 * degree), 1e-6);
    }
}

TEST_CASE(
    "path help: an eye that is half a degree high sees the bar three degrees below the horizon, above the "
    "aim point") {
    SceneView scene = seen_from(3000, 3.5);
    scene.path_help.over_aim_rad = 0.5 * degree;
    const PathHelpBar bar = bar_of(scene);
    const Projection projection = make_projection(scene.camera, {0, 0, 1280, 540});
    CHECK_NEAR(bar.bar_px, elevation_to_y_px(projection, -3.0 * degree), 1e-6);
    CHECK(bar.bar_px < bar.aim_px - 10);  // pixels grow downwards; half a degree is 15 of them
}

TEST_CASE("path help: it stands beside the runway on the side without lamps, or beyond them") {
    SceneView scene = seen_from(3000, 3.0);
    const double px_per_m = make_projection(scene.camera, {0, 0, 1280, 540}).focal_px / 3000;
    PathHelpBar bar = bar_of(scene);
    CHECK(bar.inner_px > 640 + 15 * px_per_m);
    CHECK(bar.outer_px > bar.inner_px);
    scene.lamps[0].y_m = 40;
    bar = bar_of(scene);
    CHECK(bar.inner_px < 640 - 15 * px_per_m);
    CHECK(bar.outer_px < bar.inner_px);
    scene.lamp_count = 2;
    scene.lamps[1].y_m = -40;
    bar = bar_of(scene);
    CHECK(bar.inner_px > 640 + 40 * px_per_m);
}

TEST_CASE("path help: off it is not there, nor when the aim point lies behind the eye") {
    SceneView scene = seen_from(3000, 3.0);
    scene.path_help.opacity = 0;
    CHECK_FALSE(bar_of(scene).seen);
    scene = seen_from(-500, 3.0);
    CHECK_FALSE(bar_of(scene).seen);
}
