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
        if (make.chance() < 0.8) {
            const WorldPoint t{p.x_m + 16.0 * (make.chance() - 0.5), p.y_m + 14.0 + 6.0 * make.chance(), 0};
            if (make.clear(t.x_m, t.y_m, 3.0)) make.tree(t, 5.0 + 5.0 * make.chance(), 3600.0);
        }
    }
}

// The mown strip with its stripes, the taxiway and apron beside it, and the hangars behind.
void airfield(GroundBuilder& make) {
    const double length_m = make.runway().length_m, edge_m = make.runway().width_m / 2 + 5.0;
    const double cuts_m[] = {-strip_overrun_m, 0.0, length_m, length_m + strip_overrun_m};
    for (std::size_t i = 1; i < std::size(cuts_m); ++i) {
        for (double y = edge_m; y + 13.0 < strip_half_width_m; y += 26.0) {
            for (const double side : {-1.0, 1.0}) {
                make.patch({{cuts_m[i - 1], side * y, 0},
                            {cuts_m[i], side * y, 0},
                            {cuts_m[i], side * (y + 13.0), 0},
                            {cuts_m[i - 1], side * (y + 13.0), 0}},
                           rgb_from_bytes(125, 141, 88), 0.55, always_m, true);
            }
        }
    }
    // The grass has its grain: most of it small, a little of it broad; densest where the eye comes
    // lowest.
    for (int i = 0; i < 2600; ++i) {
        const double along = make.chance(), size = make.chance();
        const double x = -strip_overrun_m + (1100.0 + strip_overrun_m) * along * (0.35 + 0.65 * along);
        const double y = (make.chance() - 0.5) * 2.0 * strip_half_width_m;
        const double radius_m = size > 0.975 ? 5.0 + 7.0 * make.chance() : 0.5 + 2.2 * size * size;
        const bool on_runway =
            x > -6.0 - radius_m && std::abs(y) < make.runway().width_m / 2 + 3.0 + radius_m;
        const double shade = make.chance();
        if (on_runway || x > length_m) continue;
        make.tuft({x, y, 0}, radius_m,
                  shade < 0.6
                      ? rgb_from_bytes(103, 120, 70)
                      : (shade < 0.85 ? rgb_from_bytes(157, 166, 113) : rgb_from_bytes(152, 143, 103)));
    }
    if (length_m < 700.0) return;
    const double turn_off_m = 560.0, half = 6.0;
    make.patch({{turn_off_m - half, make.runway().width_m / 2 - 1, 0},
                {turn_off_m + half, make.runway().width_m / 2 - 1, 0},
                {turn_off_m + half, 200, 0},
                {turn_off_m - half, 200, 0}},
               rgb_from_bytes(128, 128, 124), 1.0, always_m);
    make.patch({{430, 196, 0}, {700, 196, 0}, {700, 262, 0}, {430, 262, 0}}, rgb_from_bytes(142, 141, 135),
               1.0, always_m);
    make.house({470, 290, 0}, 0.0, 42.0, 26.0, 7.0, 10.0);
    make.house({530, 292, 0}, 0.0, 30.0, 24.0, 6.5, 9.0);
    make.house({640, 286, 0}, 0.0, 18.0, 11.0, 3.6, 6.0);
    for (const double x : {400.0, 585.0, 604.0, 720.0, 745.0})
        make.tree({x, 300.0 + 12.0 * make.chance(), 0}, 8.0, 3600.0);
}

void pond_and_bank(GroundBuilder& make) {
    Shape shape(pond().begin(), pond().end());
    const WorldPoint middle = middle_of(shape);
    Shape rim = shape;
    for (WorldPoint& p : rim)
        p = {middle.x_m + (p.x_m - middle.x_m) * 1.12, middle.y_m + (p.y_m - middle.y_m) * 1.12, 0};
    make.patch(rim, bank, 1.0, always_m);
    make.patch(shape, water, 1.0, always_m);
    for (std::size_t i = 0; i < rim.size(); i += 2) make.tree(rim[i], 4.0 + 3.0 * make.chance(), 2600.0);
}

}  // namespace

void dress_works(GroundBuilder& make) {
    course(make, river(), bank, river().half_width_m + 5.0);
    course(make, river(), water, river().half_width_m);
    pond_and_bank(make);
    for (const Course& road : roads()) course(make, road, tarmac, road.half_width_m);
    airfield(make);
    line_with_trees(make, river(), 38.0, 15.0);
    for (const Course& road : roads()) line_with_trees(make, road, 90.0, 9.0);
    for (const Village& v : villages()) village(make, v);
}

}  // namespace slopewise
