#include "ui/scene/leader.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "base/interpolate.h"
#include "base/units.h"
#include "ui/scene/convex_face.h"
#include "ui/scene/point_light.h"
#include "ui/scene/round_shapes.h"

namespace slopewise {
namespace {

// The proportions of a twin-engined transport of 34 m span and 35 m length (invented; generic).
constexpr double usual_span_m = 34.0;
constexpr double half_span_m = 17.0;

constexpr Rgb skin = rgb_from_bytes(214, 216, 218);
constexpr Rgb wing = rgb_from_bytes(168, 174, 180);
constexpr Rgb nacelle = rgb_from_bytes(120, 128, 138);
constexpr Rgb tyre = rgb_from_bytes(44, 46, 48);

// A ring round the body: where, how high its middle, how wide.
struct Ring {
    double ahead_m, up_m, radius_m;
};

struct Brush {
    const Painter& painter;
    const LeaderView& leader;

    WorldPoint at(double ahead_m, double right_m, double up_m) const {
        return place_on(leader, ahead_m, right_m, up_m);
    }

    // The skin between two rings, with the end that the eye sees: a convex part of a round body.
    void drum(const Ring& back, const Ring& front, double right_m, const Rgb& colour) const {
        constexpr std::size_t sides = 8;
        std::array<WorldPoint, sides> behind, ahead;
        for (std::size_t i = 0; i < sides; ++i) {
            const double angle = 2 * pi * (static_cast<double>(i) + 0.5) / sides;
            const double c = std::cos(angle), s = std::sin(angle);
            behind[i] = at(back.ahead_m, right_m + back.radius_m * c, back.up_m + back.radius_m * s);
            ahead[i] = at(front.ahead_m, right_m + front.radius_m * c, front.up_m + front.radius_m * s);
        }
        const WorldPoint inside =
            at((back.ahead_m + front.ahead_m) / 2, right_m, (back.up_m + front.up_m) / 2);
        face(painter, behind, inside, scaled(colour, 0.82), 1.0);
        face(painter, ahead, inside, colour, 1.0);
        for (std::size_t i = 0; i < sides; ++i) {
            const std::size_t next = (i + 1) % sides;
            const WorldPoint strip[] = {behind[i], ahead[i], ahead[next], behind[next]};
            face(painter, strip, inside, colour, 1.0);
        }
    }

    // `side`: -1 left, +1 right.
    void wing_of(double side) const {
        const WorldPoint corners[] = {at(3.5, side * 1.6, 2.4), at(-5.2, side * half_span_m, 3.9),
                                      at(-6.9, side * half_span_m, 3.9), at(-3.2, side * 1.6, 2.4)};
        plate(painter, corners, wing, 1.0);
    }

    void tailplane_of(double side) const {
        const WorldPoint corners[] = {at(-13.2, side * 0.5, 4.6), at(-16.4, side * 6.2, 5.2),
                                      at(-17.6, side * 6.2, 5.2), at(-16.8, side * 0.5, 4.6)};
        plate(painter, corners, wing, 1.0);
    }

    void fin() const {
        const WorldPoint corners[] = {at(-10.5, 0, 5.2), at(-15.6, 0, 11.6), at(-17.8, 0, 11.6),
                                      at(-16.6, 0, 4.8)};
        plate(painter, corners, skin, 1.0);
    }

    void engine_of(double side) const { drum({-0.6, 1.5, 0.75}, {3.6, 1.5, 1.05}, side * 5.6, nacelle); }

    void wheels_of(double ahead_m, double right_m, double radius_m) const {
        const WorldPoint corners[] = {at(ahead_m, right_m - 0.5, 0), at(ahead_m, right_m + 0.5, 0),
                                      at(ahead_m, right_m + 0.5, 2 * radius_m),
                                      at(ahead_m, right_m - 0.5, 2 * radius_m)};
        plate(painter, corners, tyre, 1.0);
    }

    // Far parts first, as it is mostly seen: from behind, or from ahead once it has been overtaken by the
    // view.
    void body() const {
        const bool from_behind = painter.projection.eye_x_m < leader.x_m;
        const auto fuselage = [&] {
            constexpr Ring rings[] = {
                {-17.2, 4.3, 0.25}, {-9.0, 3.5, 1.9}, {12.5, 3.4, 2.0}, {17.4, 2.9, 0.5}};
            constexpr std::size_t parts = std::size(rings) - 1;
            for (std::size_t i = 0; i < parts; ++i) {
                const std::size_t part = from_behind ? parts - 1 - i : i;
                drum(rings[part], rings[part + 1], 0.0, skin);
            }
        };
        const auto tail = [&] {
            for (const double side : {-1.0, 1.0}) tailplane_of(side);
            fin();
        };
        if (!from_behind) tail();
        wheels_of(13.0, 0.0, 0.4);
        for (const double side : {-1.0, 1.0}) {
            engine_of(side);
            wheels_of(0.0, side * 3.2, 0.55);
            wing_of(side);
        }
        fuselage();
        if (from_behind) tail();
    }
};

struct PositionLight {
    double ahead_m, right_m, up_m;
    Rgb colour;
    double intensity_cd;
    double from_deg,
        to_deg;  // seen in this sector, from straight ahead of it towards the right; negative: left
};

// Red to the left and green to the right from straight ahead to 110 degrees, white through 70 degrees either
// side of straight behind (14 CFR 25.1387); the least intensities of 25.1391 in their strongest sectors (both
// recalled).
constexpr PositionLight position_lights[] = {
    {-5.0, -half_span_m, 4.0, rgb_from_bytes(230, 48, 36), 40.0, -110.0, 0.0},
    {-5.0, half_span_m, 4.0, rgb_from_bytes(60, 200, 110), 40.0, 0.0, 110.0},
    {-17.6, 0.0, 4.3, rgb_from_bytes(255, 246, 226), 20.0, 110.0, 250.0}};

// The red beacon flashes once a second, within the 40 to 100 a minute of 14 CFR 25.1401 (recalled) and below
// the three a second that may harm.
constexpr double beacon_cd = 400.0, beacon_on_s = 0.15;

void draw_position_lights(const Painter& painter, const LeaderView& leader, double time_s) {
    const double bearing_deg =
        std::atan2(painter.projection.eye_y_m, painter.projection.eye_x_m - leader.x_m) * (180.0 / pi);
    for (const PositionLight& lamp : position_lights) {
        const double seen_deg = lamp.to_deg > 180.0 && bearing_deg < 0.0 ? bearing_deg + 360.0 : bearing_deg;
        if (seen_deg < lamp.from_deg || seen_deg > lamp.to_deg) continue;
        draw_point_light(painter, {place_on(leader, lamp.ahead_m, lamp.right_m, lamp.up_m), lamp.colour,
                                   lamp.intensity_cd});
    }
    if (time_s - std::floor(time_s) < beacon_on_s)
        draw_point_light(painter, {place_on(leader, 0.0, 0.0, 5.5), position_lights[0].colour, beacon_cd});
}

// Smoke from each main wheel, which grows, thins and drifts with the wind from where it touched.
void draw_tyre_puff(const Painter& painter, const LeaderView& leader, double headwind_mps) {
    const double age_s = leader.since_touchdown_s;
    if (age_s < 0.0 || age_s >= tyre_puff_s || painter.light.dark) return;
    const double share = age_s / tyre_puff_s, size = leader.span_m / usual_span_m;
    const double radius_m = size * (0.8 + 3.2 * share);
    for (const double side : {-1.0, 1.0}) {
        const CameraPoint seen =
            to_camera(painter.projection, {leader.touchdown_x_m - headwind_mps * age_s, side * 3.2 * size,
                                           leader.touchdown_z_m + 0.6 * radius_m});
        if (seen.ahead_m < 20.0) continue;
        const double radius_px = std::max(painter.grain_px, radius_m * pixels_per_m(painter, seen));
        soft_patch(painter, to_screen(painter.projection, seen), 1.3 * radius_px, radius_px,
                   seen_colour(painter.light, rgb_from_bytes(206, 208, 210), seen.ahead_m),
                   0.75 * (1.0 - share));
    }
}

// The line of its wheels, from far out down to where it lands: a reveal, drawn over everything.
void draw_path(const Painter& painter, const LeaderView& leader) {
    constexpr int parts = 60;
    constexpr double length_m = 12000.0, nearest_m = 20.0;
    constexpr Rgb ink = rgb_from_bytes(255, 214, 120);
    const auto at = [&](int i) {
        const double back_m =
            length_m * square(static_cast<double>(i) / parts);  // closer together where it lands
        return to_camera(painter.projection, {leader.touchdown_x_m - back_m, 0.0,
                                              leader.touchdown_z_m + back_m * std::tan(leader.path_rad)});
    };
    for (int i = 0; i < parts; ++i) {
        const CameraPoint from = at(i), to = at(i + 1);
        if (from.ahead_m < nearest_m || to.ahead_m < nearest_m) continue;
        thin_line(painter, to_screen(painter.projection, from), to_screen(painter.projection, to),
                  1.6 * painter.grain_px, 1.6 * painter.grain_px, ink, 0.9);
    }
}

}  // namespace

WorldPoint place_on(const LeaderView& leader, double ahead_m, double right_m, double up_m) {
    const double size = leader.span_m / usual_span_m, c = std::cos(leader.pitch_rad),
                 s = std::sin(leader.pitch_rad);
    return {leader.x_m + size * (ahead_m * c - up_m * s), size * right_m,
            leader.z_m + size * (ahead_m * s + up_m * c)};
}

void draw_leader(const Painter& painter, const LeaderView& leader, double headwind_mps, double time_s) {
    if (!leader.there) return;
    if (leader.path_shown) draw_path(painter, leader);
    draw_tyre_puff(painter, leader, headwind_mps);
    if (!painter.light.dark) Brush{painter, leader}.body();
    draw_position_lights(painter, leader, time_s);
}

}  // namespace slopewise
