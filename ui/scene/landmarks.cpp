#include "ui/scene/landmarks.h"
#include "ui/scene/round_shapes.h"

#include <algorithm>
#include <cmath>

#include "base/interpolate.h"
#include "base/units.h"

namespace slopewise {

namespace {

constexpr double nearest_m = 20.0;
constexpr Rgb steel = rgb_from_bytes(92, 97, 98);
constexpr Rgb wire = rgb_from_bytes(64, 68, 70);
constexpr Rgb airframe = rgb_from_bytes(230, 229, 222);
constexpr Rgb canopy = rgb_from_bytes(66, 76, 84);
constexpr Rgb sock_orange = rgb_from_bytes(232, 120, 44);
constexpr Rgb sock_white = rgb_from_bytes(240, 237, 228);

// A bar of a thickness between two places, never thinner than can be seen, fainter instead.
void bar(const Painter& painter, const WorldPoint& a, const WorldPoint& b, double thickness_m,
         const Rgb& colour, double alpha) {
    const CameraPoint from = to_camera(painter.projection, a), to = to_camera(painter.projection, b);
    if (std::min(from.ahead_m, to.ahead_m) < nearest_m) return;
    thin_line(painter, to_screen(painter.projection, from), to_screen(painter.projection, to),
              thickness_m * pixels_per_m(painter, from), thickness_m * pixels_per_m(painter, to),
              seen_colour(painter.light, colour, from.ahead_m), alpha);
}

WorldPoint raised(const WorldPoint& p, double up_m) { return {p.x_m, p.y_m, p.z_m + up_m}; }

struct Arm {
    double height_share, half_m;
};
constexpr Arm arms[] = {{0.66, 4.6}, {0.80, 5.6}, {0.94, 3.8}};

// Across the line of the wires, level and of length 1.
WorldPoint across_of(const Pylon& pylon) {
    const double dx = pylon.next_foot.x_m - pylon.foot.x_m, dy = pylon.next_foot.y_m - pylon.foot.y_m;
    const double length = std::hypot(dx, dy);
    return length < 1.0 ? WorldPoint{1, 0, 0} : WorldPoint{-dy / length, dx / length, 0};
}

WorldPoint beside(const WorldPoint& p, const WorldPoint& across, double aside_m, double up_m) {
    return {p.x_m + across.x_m * aside_m, p.y_m + across.y_m * aside_m, p.z_m + up_m};
}

void draw_wires(const Painter& painter, const Pylon& pylon, const WorldPoint& across, double presence) {
    constexpr int pieces = 5;
    constexpr double sag_m = 6.5;
    for (const Arm& arm : arms) {
        for (const double side : {-1.0, 1.0}) {
            const auto at = [&](double t) {
                const WorldPoint foot{lerp(pylon.foot.x_m, pylon.next_foot.x_m, t),
                                      lerp(pylon.foot.y_m, pylon.next_foot.y_m, t),
                                      lerp(pylon.foot.z_m, pylon.next_foot.z_m, t)};
                return beside(foot, across, side * arm.half_m,
                              pylon.height_m * arm.height_share - 1.5 - sag_m * 4.0 * t * (1.0 - t));
            };
            for (int i = 0; i < pieces; ++i)
                bar(painter, at(static_cast<double>(i) / pieces), at((i + 1.0) / pieces), 0.13, wire,
                    presence);
        }
    }
}

}  // namespace

void draw_pylon(const Painter& painter, const Pylon& pylon) {
    const CameraPoint seen = to_camera(painter.projection, pylon.foot);
    if (seen.ahead_m < nearest_m) return;
    const double tall_px = pylon.height_m * pixels_per_m(painter, seen) / painter.grain_px;
    const double presence = smooth_step(tall_px, 5.0, 11.0);
    if (presence <= 0) return;
    const WorldPoint across = across_of(pylon);
    if (pylon.wired) draw_wires(painter, pylon, across, smooth_step(tall_px, 14.0, 40.0) * 0.8);
    const double h = pylon.height_m;
    for (const double side : {-1.0, 1.0}) {
        const WorldPoint foot = beside(pylon.foot, across, side * 2.8, 0),
                         waist = beside(pylon.foot, across, side * 0.9, h * 0.60);
        bar(painter, foot, waist, 0.62, steel, presence);
        bar(painter, waist, raised(pylon.foot, h), 0.55, steel, presence);
        if (tall_px < 26.0) continue;  // the lattice
        const WorldPoint low = beside(pylon.foot, across, -side * 2.2, h * 0.18),
                         high = beside(pylon.foot, across, side * 1.5, h * 0.40);
        bar(painter, foot, low, 0.22, steel, presence * 0.8);
        bar(painter, low, high, 0.22, steel, presence * 0.8);
        bar(painter, high, beside(pylon.foot, across, -side * 0.9, h * 0.60), 0.22, steel, presence * 0.8);
    }
    for (const Arm& arm : arms) {
        const double up_m = h * arm.height_share;
        for (const double side : {-1.0, 1.0}) {
            bar(painter, beside(pylon.foot, across, side * arm.half_m, up_m), raised(pylon.foot, up_m + 1.0),
                0.24, steel, presence);
            bar(painter, beside(pylon.foot, across, side * arm.half_m, up_m), raised(pylon.foot, up_m - 0.4),
                0.18, steel, presence);
        }
    }
}

void draw_aircraft(const Painter& painter, const ParkedAircraft& a) {
    const CameraPoint seen = to_camera(painter.projection, a.place);
    if (seen.ahead_m < nearest_m || seen.ahead_m > 4000.0) return;
    const double span_px = a.span_m * pixels_per_m(painter, seen) / painter.grain_px;
    const double presence = smooth_step(span_px, 2.5, 5.0);
    if (presence <= 0) return;
    const double c = std::cos(a.heading_rad), s = std::sin(a.heading_rad), scale = a.span_m / 10.0;
    const auto at = [&](double ahead_m, double right_m, double up_m) {
        return WorldPoint{a.place.x_m + scale * (ahead_m * c - right_m * s),
                          a.place.y_m + scale * (ahead_m * s + right_m * c), a.place.z_m + scale * up_m};
    };
    const ScreenPoint foot = to_screen(painter.projection, seen);
    const double reach_px = 4.5 * scale * pixels_per_m(painter, seen);
    soft_patch(painter, foot, reach_px, reach_px * std::max(0.06, painter.projection.eye_z_m / seen.ahead_m),
               seen_colour(painter.light, rgb_from_bytes(84, 84, 80), seen.ahead_m), 0.5 * presence);
    const auto part = [&](std::span<const WorldPoint> shape, const Rgb& colour) {
        fill(painter, shape, colour, Edge::coverage, presence);
    };
    const WorldPoint tailplane[] = {at(-3.4, -1.7, 1.2), at(-3.4, 1.7, 1.2), at(-4.3, 1.6, 1.2),
                                    at(-4.3, -1.6, 1.2)};
    const WorldPoint wing[] = {at(1.2, -5, 1.15), at(1.3, 0, 0.85),  at(1.2, 5, 1.15),
                               at(-0.1, 5, 1.15), at(-0.3, 0, 0.85), at(-0.1, -5, 1.15)};
    const WorldPoint body[] = {at(3.2, 0, 0.9),  at(3.0, 0, 1.35),  at(1.2, 0, 1.55),
                               at(0.4, 0, 2.05), at(-1.0, 0, 2.0),  at(-4.4, 0, 1.4),
                               at(-4.4, 0, 1.1), at(-1.2, 0, 0.65), at(2.6, 0, 0.6)};
    const WorldPoint band[] = {at(3.1, 0, 1.05), at(3.1, 0, 1.2), at(-4.3, 0, 1.35), at(-4.3, 0, 1.2)};
    const WorldPoint glass[] = {at(1.0, 0, 1.55), at(0.4, 0, 1.98), at(-0.9, 0, 1.92), at(-1.1, 0, 1.5)};
    const WorldPoint fin[] = {at(-3.2, 0, 1.5), at(-4.1, 0, 2.6), at(-4.6, 0, 2.6), at(-4.4, 0, 1.3)};
    part(tailplane, scaled(airframe, 0.94));
    part(wing, airframe);
    part(body, scaled(airframe, 0.90));
    part(fin, a.stripe);
    part(band, a.stripe);
    part(glass, canopy);
}

double windsock_lift(double wind_mps) {
    const double level_at_mps = mps_from_kt(15.0);
    return clamp(std::abs(wind_mps) / level_at_mps, 0.0, 1.0);
}

void draw_windsock(const Painter& painter, const WorldPoint& foot, double headwind_mps, double time_s) {
    const CameraPoint seen = to_camera(painter.projection, foot);
    if (seen.ahead_m < 12.0) return;
    const double metre_px = pixels_per_m(painter, seen);
    const double presence = smooth_step(metre_px * 3.6 / painter.grain_px, 1.6, 3.2);
    if (presence <= 0) return;
    constexpr double mast_m = 6.0, length_m = 3.6, mouth_m = 0.45, tail_m = 0.22;
    const WorldPoint top = raised(foot, mast_m);
    bar(painter, foot, top, 0.14, sock_white, presence);
    const double lift = windsock_lift(headwind_mps);
    const double sway = 0.10 * (0.3 + 0.7 * lift) * std::sin(1.9 * time_s) + 0.05 * std::sin(4.3 * time_s);
    const double angle_rad = (lift * 0.98 + 0.3 * sway * lift) * pi / 2;  // from hanging
    const double along = (headwind_mps >= 0 ? -1.0 : 1.0) * std::sin(angle_rad);
    constexpr int discs = 15;  // three to a band
    // Whichever end is farther from the eye is painted first.
    for (int i = 0; i < discs; ++i) {
        const int k = along <= 0 ? i : discs - 1 - i;
        const double t = (k + 0.5) / discs, out_m = 0.3 + t * length_m;
        const CameraPoint here = to_camera(
            painter.projection,
            {top.x_m + along * out_m, top.y_m + sway * out_m, top.z_m - std::cos(angle_rad) * out_m});
        if (here.ahead_m < 8.0) continue;
        const Rgb colour =
            seen_colour(painter.light, k / 3 % 2 == 0 ? sock_orange : sock_white, here.ahead_m);
        const double radius_px = std::max(0.6, lerp(mouth_m, tail_m, t) * pixels_per_m(painter, here));
        blob(painter, to_screen(painter.projection, here), radius_px, radius_px, colour, scaled(colour, 0.8),
             presence);
    }
}

}  // namespace slopewise
