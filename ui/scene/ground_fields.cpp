#include "ui/scene/ground_fields.h"

#include <algorithm>
#include <cmath>

#include "base/units.h"

namespace slopewise {

namespace {

constexpr Rgb hedge_green = rgb_from_bytes(78, 94, 58);

void rows(GroundBuilder& make, const Field& field) {
    // Tramlines and drill rows: bands a little lighter or darker, one way or the other across the field.
    const double turn_rad = (make.chance() < 0.5 ? 0.0 : pi / 2) + 0.25 * (make.chance() - 0.5);
    const double normal_x = -std::sin(turn_rad), normal_y = std::cos(turn_rad);
    const WorldPoint middle = middle_of(field.shape);
    const double band_m = 15.0 + 12.0 * make.chance();
    for (int i = -12; i <= 12; i += 2) {
        const GroundLine low{middle.x_m + normal_x * band_m * i, middle.y_m + normal_y * band_m * i, normal_x,
                             normal_y};
        const GroundLine high{low.x_m + normal_x * band_m, low.y_m + normal_y * band_m, -normal_x, -normal_y};
        const Shape above = cut(field.shape, low).first;
        if (above.size() < 3) continue;
        const Shape band = cut(above, high).first;
        if (band.size() < 3) continue;
        make.patch(band, scaled(field.colour, 0.90 + 0.04 * make.chance()), 0.55, 1900.0, true);
    }
}

void grain(GroundBuilder& make, const Field& field) {
    const int count = static_cast<int>(area_m2(field.shape) /
                                       (std::abs(middle_of(field.shape).y_m) < 300.0 ? 1600.0 : 3600.0));
    for (int i = 0; i < count; ++i) {
        const WorldPoint p = make.anywhere_in(field.shape);
        if (!contains(field.shape, p.x_m, p.y_m)) continue;
        const double size = make.chance();
        make.tuft(p, 1.8 + 8.0 * size * size, scaled(field.colour, make.chance() < 0.6 ? 0.87 : 1.09));
    }
}

// A wood where nothing is in its way; false where it may not stand.
bool wood(GroundBuilder& make, const Field& field) {
    Shape shape;
    const WorldPoint middle = middle_of(field.shape);
    for (std::size_t i = 0; i < field.shape.size(); ++i) {
        // Rounded off: every corner becomes two.
        const WorldPoint& here = field.shape[i];
        const WorldPoint& before = field.shape[(i + field.shape.size() - 1) % field.shape.size()];
        const WorldPoint& after = field.shape[(i + 1) % field.shape.size()];
        for (const WorldPoint& toward : {before, after}) {
            const double share = 0.14 + 0.16 * make.chance();
            const double x = here.x_m + (toward.x_m - here.x_m) * share,
                         y = here.y_m + (toward.y_m - here.y_m) * share;
            shape.push_back({middle.x_m + (x - middle.x_m) * 0.95, middle.y_m + (y - middle.y_m) * 0.95, 0});
        }
    }
    const auto blocked = [&make](const WorldPoint& p) { return !make.clear(p.x_m, p.y_m, 14.0); };
    const bool under_final = std::abs(middle.y_m) < make.places().growing.woods_clear_of_final_m &&
                             middle.x_m > -3000.0 && middle.x_m < 0;
    if (under_final || blocked(middle) || std::any_of(shape.begin(), shape.end(), blocked)) return false;

    const double height_m = 10.0 + 3.0 * make.chance();
    make.wood(shape, height_m);
    if (field.least_sight_m > 1500.0) return true;
    const int inside = static_cast<int>(area_m2(shape) / 420.0);
    for (int i = 0; i < inside; ++i) {
        const WorldPoint p = make.anywhere_in(shape);
        if (contains(shape, p.x_m, p.y_m)) make.crown(p, height_m, middle_of(shape).x_m);
    }
    return true;
}

}  // namespace

void dress_fields(GroundBuilder& make, std::span<const Field> fields) {
    for (const Field& field : fields) {
        const bool is_wood = field.growth == Growth::wood && wood(make, field);
        if (field.least_sight_m > 2200.0 || is_wood) continue;
        if (field.growth == Growth::rows) rows(make, field);
        grain(make, field);
    }
}

void dress_boundary(GroundBuilder& make, const Boundary& b) {
    const double draw = make.chance();
    const double length_m = std::hypot(b.to.x_m - b.from.x_m, b.to.y_m - b.from.y_m);
    const Growing& growing = make.places().growing;
    if (draw > growing.hedge_share || length_m < 20.0)
        return;  // an open furrow: the change of colour shows it
    const double tree_share = draw < growing.tree_row_share ? 0.75 : 0.16;
    const int pieces = std::max(1, static_cast<int>(length_m / 62.0));
    const auto at = [&b](double t) {
        return WorldPoint{b.from.x_m + (b.to.x_m - b.from.x_m) * t, b.from.y_m + (b.to.y_m - b.from.y_m) * t,
                          0};
    };
    const Rgb colour = scaled(hedge_green, 0.92 + 0.16 * make.chance());
    const double height_m = 1.5 + 1.1 * make.chance();
    int first = 0;  // of the run being gathered
    for (int i = 0; i <= pieces; ++i) {
        const WorldPoint middle = at((i + 0.5) / pieces);
        const double margin_m = std::min(16.0, length_m / pieces / 2);
        const bool grows = i < pieces && make.clear(middle.x_m, middle.y_m, margin_m) &&
                           make.chance() > 0.07;  // else a gate, a gap
        if (grows && make.chance() < tree_share && !make.low_ground(middle))
            make.tree(middle, 6.0 + 6.0 * make.chance(), 3600.0);
        if (grows) continue;
        if (i > first)
            make.hedge({at(static_cast<double>(first) / pieces), at(static_cast<double>(i) / pieces),
                        height_m, 2.6, colour});
        first = i + 1;
    }
}

void dress_skyline(GroundBuilder& make) {
    for (int i = 0; i < make.places().growing.skyline_trees; ++i) {
        const double x_m = make.runway().length_m + 3000.0 + 15000.0 * make.chance() * make.chance();
        const double y_m = (make.chance() - 0.5) * (2400.0 + 0.75 * (x_m + 5500.0));
        const double half_m = 180.0 + 620.0 * make.chance();
        if (y_m + half_m > shore_y_m(make.places(), x_m)) continue;
        make.hedge({{x_m - 0.2 * half_m, y_m - half_m, 0},
                    {x_m + 0.2 * half_m, y_m + half_m, 0},
                    9.0 + 7.0 * make.chance(),
                    30.0,
                    scaled(foliage, 0.9)});
    }
}

void dress_night(GroundBuilder& make) {
    // Hamlets and the streets of towns far off: what makes a night other than black.
    for (int i = 0; i < 46; ++i) {
        const double x_m = -3000.0 + 15000.0 * make.chance();
        const double y_m = (make.chance() - 0.5) * (1500.0 + 0.8 * (x_m + 6500.0));
        const double size = make.chance(), reach_m = 60.0 + 420.0 * size * size;
        if (y_m + reach_m > shore_y_m(make.places(), x_m)) continue;
        for (int k = 0; k < 3 + static_cast<int>(15.0 * size * size); ++k) {
            const WorldPoint p{x_m + 2.0 * reach_m * (make.chance() - 0.5),
                               y_m + 2.0 * reach_m * (make.chance() - 0.5), 0};
            const Rgb tone = mix(rgb_from_bytes(255, 190, 112), rgb_from_bytes(255, 226, 180), make.chance());
            if (make.clear(p.x_m, p.y_m, 10.0)) make.lamp(p, 5.0, tone, 60.0 + 160.0 * make.chance());
        }
    }
}

}  // namespace slopewise
