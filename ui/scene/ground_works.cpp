#include "ui/scene/ground_works.h"

#include <algorithm>
#include <cmath>
#include <utility>
#include <vector>

#include "base/units.h"
#include "ui/scene/ground_places.h"
#include "ui/scene/shape.h"

namespace slopewise {

namespace {

constexpr Rgb tarmac = rgb_from_bytes(146, 144, 138);
constexpr Rgb water = rgb_from_bytes(158, 172, 180);
constexpr Rgb bank = rgb_from_bytes(92, 106, 66);
constexpr Rgb sea_deep = rgb_from_bytes(116, 142, 154);
constexpr Rgb sea_shallow = rgb_from_bytes(140, 164, 166);
constexpr Rgb sand = rgb_from_bytes(214, 202, 170);
constexpr Rgb dune = rgb_from_bytes(170, 166, 120);
constexpr Rgb surf = rgb_from_bytes(232, 236, 232);
constexpr double always_m = 1e9;  // seen from any distance

void course(GroundBuilder& make, const Course& c, const Rgb& colour, double half_width_m) {
    std::vector<std::pair<WorldPoint, WorldPoint>> sides;
    for (std::size_t i = 0; i < c.points.size(); ++i) {
        const WorldPoint& before = c.points[i == 0 ? 0 : i - 1];
        const WorldPoint& after = c.points[std::min(i + 1, c.points.size() - 1)];
        const double length_m = std::hypot(after.x_m - before.x_m, after.y_m - before.y_m);
        const double nx = -(after.y_m - before.y_m) / length_m * half_width_m;
        const double ny = (after.x_m - before.x_m) / length_m * half_width_m;
        const WorldPoint& p = c.points[i];
        sides.push_back({{p.x_m + nx, p.y_m + ny, 0}, {p.x_m - nx, p.y_m - ny, 0}});
    }
    for (std::size_t i = 1; i < sides.size(); ++i) {
        const Shape quad = {sides[i - 1].first, sides[i - 1].second, sides[i].second, sides[i].first};
        const WorldPoint middle = middle_of(quad);
        if (!make.on_strip(middle, 60.0)) make.patch(quad, colour, 1.0, always_m);
    }
}

// Trees stand along the water and here and there along a road.
void line_with_trees(GroundBuilder& make, const Course& c, double spacing_m, double offset_m) {
    for (std::size_t i = 1; i < c.points.size(); ++i) {
        const WorldPoint& a = c.points[i - 1];
        const WorldPoint& b = c.points[i];
        const double length_m = std::hypot(b.x_m - a.x_m, b.y_m - a.y_m);
        for (double s = spacing_m * make.chance(); s < length_m;
             s += spacing_m * (0.4 + 1.2 * make.chance())) {
            const double side = make.chance() < 0.5 ? -1.0 : 1.0;
            const double away_m = side * (offset_m + 6.0 * make.chance());
            const WorldPoint p{a.x_m + ((b.x_m - a.x_m) * s - (b.y_m - a.y_m) * away_m) / length_m,
                               a.y_m + ((b.y_m - a.y_m) * s + (b.x_m - a.x_m) * away_m) / length_m, 0};
            if (make.clear(p.x_m, p.y_m, 3.0) && !make.low_ground(p))
                make.tree(p, 6.0 + 6.0 * make.chance(), 3800.0);
        }
    }
}

void village(GroundBuilder& make, const Village& v) {
    std::vector<WorldPoint> taken;
    const double grain_rad = make.chance() * pi;
    for (int tries = 0; tries < v.houses * 8 && static_cast<int>(taken.size()) < v.houses; ++tries) {
        const double far = std::sqrt(make.chance()) * v.radius_m, bearing = make.chance() * 2 * pi;
        const WorldPoint p{v.middle.x_m + far * std::cos(bearing), v.middle.y_m + far * std::sin(bearing), 0};
        const bool crowded = std::any_of(taken.begin(), taken.end(), [&p](const WorldPoint& q) {
            return std::hypot(p.x_m - q.x_m, p.y_m - q.y_m) < 26.0;
        });
        if (crowded || !make.clear(p.x_m, p.y_m, 11.0)) continue;
        taken.push_back(p);
        const bool barn = v.houses < 6 && taken.size() == 1;
        const double heading_rad =
            grain_rad + (make.chance() < 0.5 ? 0.0 : pi / 2) + 0.2 * (make.chance() - 0.5);
        make.house(p, heading_rad, barn ? 26.0 : 10.0 + 5.0 * make.chance(), barn ? 13.0 : 7.5,
                   barn ? 5.5 : 5.0, barn ? 9.0 : 8.2);
        for (int window = make.chance() < 0.75 ? 1 + static_cast<int>(2 * make.chance()) : 0; window > 0;
             --window)
            make.lamp({p.x_m - 5.0, p.y_m + 8.0 * (make.chance() - 0.5), 0}, 2.2,
                      mix(rgb_from_bytes(255, 204, 128), rgb_from_bytes(255, 228, 180), make.chance()),
                      8.0 + 22.0 * make.chance());
        if (make.chance() < 0.8) {
            const WorldPoint t{p.x_m + 16.0 * (make.chance() - 0.5), p.y_m + 14.0 + 6.0 * make.chance(), 0};
            if (make.clear(t.x_m, t.y_m, 3.0)) make.tree(t, 5.0 + 5.0 * make.chance(), 3600.0);
        }
    }
}

Shape oval(const Pond& pond, double scale) {
    constexpr int corners = 14;
    Shape shape;
    for (int i = 0; i < corners; ++i) {
        const double angle = 2 * pi * i / corners;
        const double uneven = scale * (1.0 + 0.07 * std::sin(3.0 * angle + pond.middle.x_m));
        shape.push_back({pond.middle.x_m + pond.reach_x_m * uneven * std::cos(angle),
                         pond.middle.y_m + pond.reach_y_m * uneven * std::sin(angle), 0});
    }
    return shape;
}

void pond_and_bank(GroundBuilder& make, const Pond& pond) {
    const Shape rim = oval(pond, 1.0 + 6.0 / pond.reach_y_m);
    make.patch(rim, bank, 1.0, always_m);
    make.patch(oval(pond, 1.0), water, 1.0, always_m);
    for (std::size_t i = 0; i < rim.size(); i += 2) make.tree(rim[i], 4.0 + 3.0 * make.chance(), 2600.0);
}

// The sea in quads along the shore, each short enough for the haze to be right at its corners, and a beach
// that covers their edge.
void sea(GroundBuilder& make) {
    const Places& places = make.places();
    if (places.shore.empty()) return;
    constexpr double far_y_m = 13000.0;
    double step_m = 300.0;
    for (double x = places.shore.front().x_m; x < places.shore.back().x_m; x += step_m) {
        step_m = x < 4000.0 ? 300.0 : 900.0;
        const double next = std::min(x + step_m, places.shore.back().x_m);
        const double y = shore_y_m(places, x), next_y = shore_y_m(places, next);
        const auto band = [&](double from_m, double to_m, const Rgb& colour, double alpha, bool faint) {
            make.patch(
                {{x, y + from_m, 0}, {next, next_y + from_m, 0}, {next, next_y + to_m, 0}, {x, y + to_m, 0}},
                colour, alpha, always_m, faint);
        };
        make.patch({{x, y, 0}, {next, next_y, 0}, {next, far_y_m, 0}, {x, far_y_m, 0}}, sea_deep, 1.0,
                   always_m, true);
        band(-2, 160, sea_shallow, 0.45, true);
        band(-2, 60, sea_shallow, 0.55, true);
        band(-26, -40, dune, 0.8, true);
        band(-27, 3, sand, 1.0, true);
        if (x < 4000.0) band(4, 7, surf, 0.75, false);
    }
    for (int i = 0; i < 150; ++i) {  // long swells
        const double x = -6000.0 + 12000.0 * make.chance(),
                     y = shore_y_m(places, x) + 120.0 + 3000.0 * make.chance();
        const double half_m = 60.0 + 160.0 * make.chance(), deep_m = 4.0 + 7.0 * make.chance();
        make.patch({{x - 0.3 * half_m, y - half_m, 0},
                    {x - 0.3 * half_m + deep_m, y - half_m, 0},
                    {x + 0.3 * half_m + deep_m, y + half_m, 0},
                    {x + 0.3 * half_m, y + half_m, 0}},
                   make.chance() < 0.5 ? sea_shallow : scaled(sea_deep, 0.9), 0.35, 5000.0);
    }
}

// A power line: known by everyone to be some thirty metres high.
void power_line(GroundBuilder& make) {
    const std::vector<WorldPoint>& row = make.places().pylons;
    for (std::size_t i = 0; i < row.size(); ++i)
        make.pylon(row[i], i + 1 < row.size() ? &row[i + 1] : nullptr, 31.0);
}

// Lamps along the road through a village, warm and evenly spaced.
void street_lamps(GroundBuilder& make, const Course& road) {
    const auto in_village = [&make](double x_m, double y_m) {
        return std::any_of(
            make.places().villages.begin(), make.places().villages.end(), [&](const Village& v) {
                return v.houses > 5 && std::hypot(x_m - v.middle.x_m, y_m - v.middle.y_m) < 1.5 * v.radius_m;
            });
    };
    for (std::size_t i = 1; i < road.points.size(); ++i) {
        const WorldPoint &a = road.points[i - 1], &b = road.points[i];
        const double length_m = std::hypot(b.x_m - a.x_m, b.y_m - a.y_m);
        for (double s = 0; s < length_m; s += 42.0) {
            const double x = a.x_m + (b.x_m - a.x_m) * s / length_m,
                         y = a.y_m + (b.y_m - a.y_m) * s / length_m;
            if (in_village(x, y)) make.lamp({x, y + 4.0, 0}, 6.0, rgb_from_bytes(255, 196, 120), 90.0);
        }
    }
}

}  // namespace

void dress_works(GroundBuilder& make) {
    const Places& places = make.places();
    sea(make);
    for (const Course& river : places.rivers) course(make, river, bank, river.half_width_m + 5.0);
    for (const Course& river : places.rivers) course(make, river, water, river.half_width_m);
    for (const Pond& pond : places.ponds) pond_and_bank(make, pond);
    for (const Course& road : places.roads) course(make, road, tarmac, road.half_width_m);
    for (const Course& river : places.rivers) line_with_trees(make, river, 38.0, 15.0);
    for (const Course& road : places.roads) line_with_trees(make, road, 90.0, 9.0);
    for (const Village& v : places.villages) village(make, v);
    for (const Course& road : places.roads) street_lamps(make, road);
    power_line(make);
    make.traffic(places.roads.front());
}

}  // namespace slopewise
