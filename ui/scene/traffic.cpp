#include "ui/scene/traffic.h"

#include <algorithm>
#include <cmath>

#include "base/interpolate.h"
#include "ui/scene/buildings.h"

namespace slopewise {

namespace {

constexpr double lane_m = 1.7;
constexpr Rgb paints[] = {
    rgb_from_bytes(196, 198, 198), rgb_from_bytes(62, 72, 88),    rgb_from_bytes(120, 126, 130),
    rgb_from_bytes(222, 220, 212), rgb_from_bytes(44, 46, 48),    rgb_from_bytes(88, 104, 116),
    rgb_from_bytes(170, 160, 138), rgb_from_bytes(226, 224, 216), rgb_from_bytes(74, 90, 82)};

double length_of(const Course& road) {
    double length_m = 0;
    for (std::size_t i = 1; i < road.points.size(); ++i)
        length_m += std::hypot(road.points[i].x_m - road.points[i - 1].x_m,
                               road.points[i].y_m - road.points[i - 1].y_m);
    return length_m;
}

// So far along the road, on the right of it as driven.
Vehicle placed(const Course& road, double along_m, bool onward) {
    Vehicle v;
    for (std::size_t i = 1; i < road.points.size(); ++i) {
        const WorldPoint &a = road.points[i - 1], &b = road.points[i];
        const double length_m = std::hypot(b.x_m - a.x_m, b.y_m - a.y_m);
        if (along_m > length_m && i + 1 < road.points.size()) {
            along_m -= length_m;
            continue;
        }
        const double t = along_m / length_m, way = onward ? 1.0 : -1.0;
        const double dx = way * (b.x_m - a.x_m) / length_m, dy = way * (b.y_m - a.y_m) / length_m;
        v.place = {lerp(a.x_m, b.x_m, t) - dy * lane_m, lerp(a.y_m, b.y_m, t) + dx * lane_m,
                   lerp(a.z_m, b.z_m, t)};
        v.heading_rad = std::atan2(dy, dx);
        break;
    }
    return v;
}

}  // namespace

std::array<Vehicle, vehicle_count> vehicles_at(const Course& road, double time_s) {
    std::array<Vehicle, vehicle_count> vehicles;
    const double length_m = length_of(road);
    for (std::size_t i = 0; i < vehicle_count; ++i) {
        const bool onward = i % 2 == 0;
        const double pace_mps = 12.0 + 1.3 * static_cast<double>(i * 5 % 7);
        const double run_m =
            std::fmod(length_m * (static_cast<double>(i) + 0.35) / vehicle_count + pace_mps * time_s,
                      std::max(1.0, length_m));
        if (road.points.size() > 1) vehicles[i] = placed(road, onward ? run_m : length_m - run_m, onward);
        vehicles[i].colour = paints[i];
        if (i % 4 == 3) {  // a lorry
            vehicles[i].length_m = 9.0;
            vehicles[i].width_m = 2.5;
            vehicles[i].height_m = 3.4;
        }
    }
    return vehicles;
}

void draw_traffic(const Painter& painter, const GroundLayout& ground, double time_s) {
    for (const Vehicle& v : vehicles_at(ground.traffic, time_s))
        draw_block(painter, {v.place, v.heading_rad, v.length_m, v.width_m, v.height_m}, v.colour);
}

void draw_ground_lights(const Painter& painter, const GroundLayout& ground, double time_s) {
    if (painter.light.lamps_lit <= 0) return;
    for (const PointLight& lamp : ground.lamps) draw_point_light(painter, lamp, painter.light.lamps_lit);
    for (const Vehicle& v : vehicles_at(ground.traffic, time_s)) {
        const double dx = std::cos(v.heading_rad), dy = std::sin(v.heading_rad);
        // What shows of it: lamps ahead to those it meets, tail lamps to those behind.
        const double to_x = painter.projection.eye_x_m - v.place.x_m,
                     to_y = painter.projection.eye_y_m - v.place.y_m;
        const double facing = (dx * to_x + dy * to_y) / std::max(1.0, std::hypot(to_x, to_y));
        const double end_m = (facing > 0 ? 0.5 : -0.5) * v.length_m;
        const Rgb colour = facing > 0 ? rgb_from_bytes(255, 242, 214) : rgb_from_bytes(214, 52, 36);
        const double intensity_cd = facing > 0 ? 40.0 + 700.0 * square(facing) : 6.0 + 14.0 * square(facing);
        for (const double side : {-0.7, 0.7}) {
            draw_point_light(painter, {{v.place.x_m + dx * end_m - dy * side,
                                        v.place.y_m + dy * end_m + dx * side, v.place.z_m + 0.7},
                                       colour,
                                       intensity_cd});
        }
    }
}

}  // namespace slopewise
