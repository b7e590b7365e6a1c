// The picture's geometry, held to closed form: what the eye would measure, measured on the screen.
#include <doctest/doctest.h>

#include <array>
#include <cmath>

#include "ui/scene/lamps.h"
#include "ui/scene/projection.h"
#include "ui/scene/runway_markings.h"

using namespace slopewise;

namespace {

constexpr double deg = 3.14159265358979323846 / 180.0;
constexpr double ft_m = 0.3048, nm_m = 1852.0;

void check_near(double value, double expected, double tolerance) {
    CAPTURE(value);
    CAPTURE(expected);
    CHECK(std::abs(value - expected) <= tolerance);
}

// An eye on a path to an aim point some way beyond the threshold, looking a little below the horizon.
Projection eye_on_path(double to_aim_m, double aim_m, double path_deg, double pitch_deg = -1.5,
                       double width_px = 1280, double height_px = 547) {
    const CameraView camera{aim_m - to_aim_m, 0, to_aim_m * std::tan(path_deg * deg), pitch_deg * deg,
                            40 * deg};
    return make_projection(camera, {0, 0, width_px, height_px});
}

SightAngles angles_to(const Projection& p, const WorldPoint& point) {
    return sight_angles(p, to_screen(p, to_camera(p, point)));
}

// The angle at the eye between two places, from their places on the screen alone.
double between_rad(const Projection& p, const WorldPoint& a, const WorldPoint& b) {
    const auto direction = [](const SightAngles& s) {
        return std::array<double, 3>{std::cos(s.depression_rad) * std::cos(s.azimuth_rad),
                                     std::cos(s.depression_rad) * std::sin(s.azimuth_rad),
                                     -std::sin(s.depression_rad)};
    };
    const auto u = direction(angles_to(p, a)), v = direction(angles_to(p, b));
    const double dot = u[0] * v[0] + u[1] * v[1] + u[2] * v[2];
    const double cross =
        std::sqrt(std::pow(u[1] * v[2] - u[2] * v[1], 2) + std::pow(u[2] * v[0] - u[0] * v[2], 2) +
                  std::pow(u[0] * v[1] - u[1] * v[0], 2));
    return std::atan2(cross, dot);
}

struct RunwayPictureAngles {
    double threshold_deg, far_end_deg, near_width_deg, far_width_deg;
};

RunwayPictureAngles measured(double width_ft, double length_ft, double distance_nm) {
    const Projection p = eye_on_path(distance_nm * nm_m, 1000 * ft_m, 3.0);
    const double half_m = width_ft * ft_m / 2, length_m = length_ft * ft_m;
    return {angles_to(p, {0, 0, 0}).depression_rad / deg, angles_to(p, {length_m, 0, 0}).depression_rad / deg,
            between_rad(p, {0, -half_m, 0}, {0, half_m, 0}) / deg,
            between_rad(p, {length_m, -half_m, 0}, {length_m, half_m, 0}) / deg};
}

}  // namespace

// Computed from the geometry named in the row: 3 degrees, aim point 1,000 ft in (geometry of a runway seen
// from the path).
TEST_CASE("projection: the runway has the angles that geometry gives it") {
    const RunwayPictureAngles small = measured(75, 3000, 1);
    check_near(small.threshold_deg, 3.590, 0.005);
    check_near(small.far_end_deg, 2.258, 0.005);
    check_near(small.near_width_deg, 0.845, 0.005);
    check_near(small.far_width_deg, 0.532, 0.005);

    const RunwayPictureAngles large = measured(100, 5000, 1);
    check_near(large.threshold_deg, 3.590, 0.005);
    check_near(large.far_end_deg, 1.810, 0.005);
    check_near(large.near_width_deg, 1.126, 0.005);
    check_near(large.far_width_deg, 0.568, 0.005);

    const RunwayPictureAngles far_off = measured(100, 5000, 3);
    check_near(far_off.threshold_deg, 3.174, 0.005);
    check_near(far_off.far_end_deg, 2.461, 0.005);
}

// Form ratio as Mertens defines it (FAA-AM-79-25): vertical height over the width of the far end.
TEST_CASE("projection: the runway's form ratio is Mertens' to one per cent") {
    const auto ratio = [](double width_ft, double length_ft, double distance_nm) {
        const RunwayPictureAngles a = measured(width_ft, length_ft, distance_nm);
        return (a.threshold_deg - a.far_end_deg) / a.far_width_deg;
    };
    struct Row {
        double width_ft, length_ft, at_3_nm, at_1_nm;
    };
    for (const Row& row :
         {Row{75, 3000, 2.21, 2.50}, Row{100, 5000, 2.77, 3.13}, Row{150, 6000, 2.21, 2.50}}) {
        CAPTURE(row.width_ft);
        check_near(ratio(row.width_ft, row.length_ft, 3), row.at_3_nm, 0.01 * row.at_3_nm);
        check_near(ratio(row.width_ft, row.length_ft, 1), row.at_1_nm, 0.01 * row.at_1_nm);
    }
}

// The horizon of a flat world is at zero depression, so the aim point lies the path angle below it at
// every distance (Airplane Flying Handbook, FAA-H-8083-3C, p. 176; closed form).
TEST_CASE("projection: the aim point stays three degrees under the horizon from 3 NM to 200 ft") {
    const double aim_m = 300;
    double first_gap_px = -1;
    for (double to_aim_m = 3 * nm_m; to_aim_m * std::tan(3 * deg) >= 200 * ft_m; to_aim_m -= 100) {
        const Projection p = eye_on_path(to_aim_m, aim_m, 3.0);
        const double horizon_px = elevation_to_y_px(p, 0);
        const ScreenPoint aim = to_screen(p, to_camera(p, {aim_m, 0, 0}));
        const double gap_px = aim.y_px - horizon_px;
        if (first_gap_px < 0) first_gap_px = gap_px;
        check_near(gap_px, first_gap_px, 0.5);
        check_near(sight_angles(p, aim).depression_rad / deg, 3.0, 0.005);
        check_near(sight_angles(p, {640, horizon_px}).depression_rad, 0.0, 1e-12);
    }
    // Three degrees about the view axis at 1,280 px over 40 degrees: 640 / tan 20 deg * (tan 1.5 + tan 1.5
    // deg).
    check_near(first_gap_px, 640 / std::tan(20 * deg) * 2 * std::tan(1.5 * deg), 0.5);
}

TEST_CASE("projection: the field of view spans the width, whatever the shape of the window") {
    for (const double height_px : {296.0, 547.0, 900.0}) {
        const Projection p = make_projection({0, 0, 100, 0, 40 * deg}, {10, 20, 1290, 20 + height_px});
        const ScreenPoint left = to_screen(p, to_camera(p, {1000, -1000 * std::tan(20 * deg), 100}));
        const ScreenPoint right = to_screen(p, to_camera(p, {1000, 1000 * std::tan(20 * deg), 100}));
        check_near(left.x_px, 10, 1e-9);
        check_near(right.x_px, 1290, 1e-9);
        check_near(left.y_px, 20 + height_px / 2, 1e-9);
    }
}

TEST_CASE("projection: pitching the view moves the horizon and changes no angle") {
    for (const double pitch_deg : {-8.0, -3.0, 0.0, 5.0}) {
        const Projection p = eye_on_path(2 * nm_m, 300, 3.0, pitch_deg);
        check_near(angles_to(p, {300, 0, 0}).depression_rad / deg, 3.0, 1e-9);
        check_near(angles_to(p, {300, 120, 0}).azimuth_rad, std::atan2(120, 2 * nm_m), 1e-12);
        check_near(elevation_to_y_px(p, 0), p.centre_y_px + p.focal_px * std::tan(pitch_deg * deg), 1e-9);
    }
}

TEST_CASE("projection: a polygon is cut where it passes the eye") {
    const Projection p = make_projection({0, 0, 10, -3 * deg, 40 * deg}, {0, 0, 1280, 547});
    SUBCASE("all of it behind: nothing is left") {
        const WorldPoint behind[] = {{-10, -5, 0}, {-10, 5, 0}, {-50, 5, 0}, {-50, -5, 0}};
        CHECK(clip_near(p, behind).count == 0);
    }
    SUBCASE("all of it in front: it is whole") {
        const WorldPoint ahead[] = {{100, -5, 0}, {100, 5, 0}, {200, 5, 0}, {200, -5, 0}};
        CHECK(clip_near(p, ahead).count == 4);
    }
    SUBCASE("half and half: the cut lies on its own edges, at the near plane") {
        const WorldPoint across[] = {{-100, -15, 0}, {-100, 15, 0}, {900, 15, 0}, {900, -15, 0}};
        const ClippedPolygon cut = clip_near(p, across);
        REQUIRE(cut.count == 4);
        int on_plane = 0;
        for (std::size_t i = 0; i < cut.count; ++i) {
            CHECK(cut.point[i].ahead_m >= near_plane_m - 1e-9);
            check_near(std::abs(cut.point[i].right_m), 15, 1e-9);
            on_plane += std::abs(cut.point[i].ahead_m - near_plane_m) < 1e-9 ? 1 : 0;
        }
        CHECK(on_plane == 2);
    }
    SUBCASE("one corner behind: a corner more") {
        const WorldPoint corner[] = {{-30, 0, 0}, {100, 60, 0}, {200, 0, 0}, {100, -60, 0}};
        CHECK(clip_near(p, corner).count == 5);
    }
    SUBCASE("two corners are no polygon") {
        const WorldPoint line[] = {{100, 0, 0}, {200, 0, 0}};
        CHECK(clip_near(p, line).count == 0);
    }
}

// Lamps 9 m apart (UFC 3-535-01, 12-3): their gap in pixels is focal length times 9 m over the distance.
TEST_CASE("lamps: each stands where its unit stands, to a hundredth of a pixel") {
    const double aim_m = 300, width_px = 1920, focal_px = 960 / std::tan(20 * deg);
    struct Row {
        double distance_nm, gap_px;
    };
    // 46 pixels to the degree: 4.3, 6.4 and 12.8 px at 3, 2 and 1 NM.
    for (const Row& row : {Row{3, 4.3}, Row{2, 6.4}, Row{1, 12.8}}) {
        const Projection p = eye_on_path(row.distance_nm * nm_m, aim_m, 3.0, 0.0, width_px, 820);
        SceneView scene;
        scene.lamp_count = 4;
        for (std::size_t i = 0; i < 4; ++i)
            scene.lamps[i] = {aim_m, -(15 + 15 + 9.0 * static_cast<double>(i)), 0, 0, true};
        check_near(lamp_gap_px(p, scene), row.gap_px, 0.15);
        for (std::size_t i = 0; i < 4; ++i) {
            const LampOnScreen lamp = lamp_on_screen(p, scene.lamps[i]);
            CHECK(lamp.seen);
            // A level view: a lamp's distance along the axis is its distance along the runway.
            check_near(lamp.place.x_px,
                       width_px / 2 + focal_px * scene.lamps[i].y_m / (row.distance_nm * nm_m), 0.01);
            check_near(lamp.place.y_px, 410 + focal_px * std::tan(3 * deg), 0.01);
        }
    }
}

TEST_CASE("lamps: one that shows nothing is not seen, one behind the eye does not stand") {
    const Projection p = eye_on_path(nm_m, 300, 3.0);
    CHECK(lamp_on_screen(p, {300, -30, 0, 1, true}).seen);
    CHECK_FALSE(lamp_on_screen(p, {300, -30, 0, 1, false}).seen);
    CHECK(lamp_on_screen(p, {300, -30, 0, 1, false}).standing);
    CHECK_FALSE(lamp_on_screen(p, {-3000, -30, 0, 1, true}).standing);
}

// FAA Aeronautical Information Manual 2-3-3 h, table of threshold stripes by runway width.
TEST_CASE("markings: threshold stripes follow the width of the runway") {
    struct Row {
        double width_ft;
        int stripes;
    };
    for (const Row& row : {Row{60, 4}, Row{75, 6}, Row{100, 8}, Row{150, 12}, Row{200, 16}}) {
        CAPTURE(row.width_ft);
        CHECK(threshold_stripe_count(row.width_ft * ft_m) == row.stripes);
    }
    // The metric widths that stand for them: 18, 23, 30, 45 and 60 m.
    CHECK(threshold_stripe_count(18) == 4);
    CHECK(threshold_stripe_count(23) == 6);
    CHECK(threshold_stripe_count(30) == 8);
    CHECK(threshold_stripe_count(45) == 12);
    CHECK(threshold_stripe_count(60) == 16);
}

namespace {

RunwayView runway_30_m(double slope = 0) { return {1500, 30, slope, 300, 45, 6, 18, "27"}; }

struct Extent {
    double min_x_m = 1e9, max_x_m = -1e9, min_y_m = 1e9, max_y_m = -1e9;
};
Extent extent_of(const RunwayPicture& picture, const RunwayMark& mark) {
    Extent e;
    for (const WorldPoint& p : picture.at(mark)) {
        e.min_x_m = std::min(e.min_x_m, p.x_m);
        e.max_x_m = std::max(e.max_x_m, p.x_m);
        e.min_y_m = std::min(e.min_y_m, p.y_m);
        e.max_y_m = std::max(e.max_y_m, p.y_m);
    }
    return e;
}

}  // namespace

// Stripes 150 ft by 5.75 ft, 5.75 ft apart, 11.5 ft in the middle, from 20 ft (marking text after Horonjeff):
// eight of them are 92 ft wide.
TEST_CASE("markings: the stripes of a 100 ft runway are 92 ft across and begin 20 ft in") {
    const RunwayPicture picture = make_runway_picture(runway_30_m());
    Extent all;
    int near_stripes = 0;
    for (const RunwayMark& mark : picture.marks) {
        if (mark.kind != RunwayMark::Kind::threshold_stripe) continue;
        const Extent e = extent_of(picture, mark);
        if (e.min_x_m > 750) continue;
        ++near_stripes;
        all = {std::min(all.min_x_m, e.min_x_m), std::max(all.max_x_m, e.max_x_m),
               std::min(all.min_y_m, e.min_y_m), std::max(all.max_y_m, e.max_y_m)};
    }
    CHECK(near_stripes == 8);
    check_near(all.min_x_m, 20 * ft_m, 1e-9);
    check_near(all.max_x_m, 170 * ft_m, 1e-9);
    check_near(all.max_y_m - all.min_y_m, 92 * ft_m, 1e-9);
}

TEST_CASE("markings: the aiming-point marking begins at the aim point, a pair about the centreline") {
    const RunwayPicture picture = make_runway_picture(runway_30_m());
    int near_bars = 0;
    for (const RunwayMark& mark : picture.marks) {
        if (mark.kind != RunwayMark::Kind::aiming_point) continue;
        const Extent e = extent_of(picture, mark);
        if (e.min_x_m > 750) continue;
        ++near_bars;
        check_near(e.min_x_m, 300, 1e-9);
        check_near(e.max_x_m, 345, 1e-9);
        check_near(std::min(std::abs(e.min_y_m), std::abs(e.max_y_m)), 9, 1e-9);
        check_near(e.max_y_m - e.min_y_m, 6, 1e-9);
    }
    CHECK(near_bars == 2);
}

TEST_CASE("markings: all paint lies on the runway and follows its slope") {
    const double slope = 0.02;
    const RunwayPicture picture = make_runway_picture(runway_30_m(slope));
    for (const RunwayMark& mark : picture.marks) {
        for (const WorldPoint& p : picture.at(mark)) {
            check_near(p.z_m, slope * std::min(1500.0, std::max(0.0, p.x_m)), 1e-9);
            if (mark.kind == RunwayMark::Kind::shoulder) continue;
            CHECK(std::abs(p.y_m) <= 15 + 1e-9);
            CHECK(p.x_m >= -1e-9);
            CHECK(p.x_m <= 1500 + 1e-9);
        }
    }
}
