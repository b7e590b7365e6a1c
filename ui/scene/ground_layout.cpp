#include "ui/scene/ground_layout.h"

#include <algorithm>
#include <cmath>

#include "base/units.h"
#include "ui/scene/ground_airfield.h"
#include "ui/scene/ground_builder.h"
#include "ui/scene/ground_fields.h"
#include "ui/scene/ground_works.h"
#include "ui/scene/shape.h"

namespace slopewise {

namespace {

// The country drawn: from behind the farthest start of an approach to where haze has taken everything.
// Fields that are never seen from nearer stay bare.
constexpr double dressed_within_m = 5200;

constexpr double first_x_m = -8500, last_x_m = 26000, half_breadth_m = 13000;

constexpr Rgb pasture[] = {rgb_from_bytes(121, 137, 84), rgb_from_bytes(112, 129, 80),
                           rgb_from_bytes(132, 143, 92), rgb_from_bytes(104, 123, 74),
                           rgb_from_bytes(126, 134, 88), rgb_from_bytes(140, 148, 98)};
constexpr Rgb ripe[] = {rgb_from_bytes(186, 172, 116), rgb_from_bytes(174, 160, 108),
                        rgb_from_bytes(196, 184, 136), rgb_from_bytes(170, 164, 112)};
constexpr Rgb crop[] = {rgb_from_bytes(100, 116, 66), rgb_from_bytes(107, 123, 72),
                        rgb_from_bytes(96, 111, 67)};
constexpr Rgb earth[] = {rgb_from_bytes(149, 130, 98), rgb_from_bytes(139, 123, 95)};
constexpr Rgb mown = rgb_from_bytes(132, 147, 92);

// How near any approach brings the eye to a place while it is in view: the eye keeps to the extended
// centreline, and the edge of a 40-degree view lies 2.9 times as far off as to the side.
double least_sight_m(double x_m, double y_m) {
    const double beyond_m = std::max(0.0, x_m - 1200.0);
    return std::hypot(2.9 * y_m, beyond_m);
}

class Maker {
public:
    Maker(GroundLayout& ground, const RunwayView& runway)
        : ground_(ground), runway_(runway), places_(places_of(runway)), make_(ground, runway, places_) {}

    void make() {
        const Shape whole = {{first_x_m, -half_breadth_m, 0},
                             {first_x_m, half_breadth_m, 0},
                             {last_x_m, half_breadth_m, 0},
                             {last_x_m, -half_breadth_m, 0}};
        airfield(whole);
        dress_fields(make_, fields_);
        dress_works(make_);
        dress_airfield(make_);
        for (const Boundary& boundary : boundaries_) dress_boundary(make_, boundary);
        dress_skyline(make_);
        dress_night(make_);
        make_.sort();
    }

private:
    // The cuts that lift the strip out of the country, and along which a sloping runway bends the ground.
    std::int32_t airfield(const Shape& whole) {
        const double cut_at_m[] = {runway_.length_m + strip_overrun_m, runway_.length_m, 0.0,
                                   -strip_overrun_m};
        return lengthwise(whole, cut_at_m, 0);
    }

    std::int32_t lengthwise(const Shape& shape, std::span<const double> cut_at_m, int piece) {
        if (cut_at_m.empty()) return open_country(shape, 0);
        const auto [far_side, near_side] = cut(shape, {cut_at_m[0], 0, 1, 0});
        const std::int32_t node = add(shape);
        // The first piece lies beyond the strip; the next three hold it.
        const std::int32_t far_half = piece == 0 ? open_country(far_side, 0) : breadthwise(far_side);
        join(node, far_half, lengthwise(near_side, cut_at_m.subspan(1), piece + 1));
        return node;
    }

    std::int32_t breadthwise(const Shape& shape) {
        const auto [right, rest] = cut(shape, {0, places_.strip_half_width_m, 0, 1});
        const auto [left, strip] = cut(rest, {0, -places_.strip_half_width_m, 0, -1});
        const std::int32_t node = add(shape), inner = add(rest);
        const std::int32_t right_node = open_country(right, 0), left_node = open_country(left, 0);
        const std::int32_t strip_node = add(strip);
        ground_.fields[static_cast<std::size_t>(strip_node)].colour = mown;
        join(inner, left_node, strip_node);
        join(node, right_node, inner);
        return node;
    }

    std::int32_t open_country(const Shape& shape, int depth) {
        const std::int32_t node = add(shape);
        const double area = ground_.fields[static_cast<std::size_t>(node)].area_m2;
        const WorldPoint middle = middle_of(shape);
        const double sight_m = least_sight_m(middle.x_m, middle.y_m);
        const double wanted_m2 = places_.growing.field_m2 * (0.7 + 0.9 * make_.chance()) *
                                 std::max(1.0, std::pow(sight_m / 1900.0, 1.8));
        if (area < wanted_m2 * 1.5 || depth > 24) {
            sow(node, shape, sight_m);
            return node;
        }
        const GroundLine line = across(shape, middle, depth);
        const auto [one, other] = cut(shape, line);
        if (one.size() < 3 || other.size() < 3) {
            sow(node, shape, sight_m);
            return node;
        }
        Boundary boundary;
        if (area < 900000.0 && sight_m < dressed_within_m &&
            crossings(shape, line, boundary.from, boundary.to)) {
            boundaries_.push_back(boundary);
        }
        const bool one_is_far = middle_of(one).x_m > middle_of(other).x_m;
        const std::int32_t far_half = open_country(one_is_far ? one : other, depth + 1);
        join(node, far_half, open_country(one_is_far ? other : one, depth + 1));
        return node;
    }

    // A cut across the longer way, a little off square, along the grain of the neighbourhood.
    GroundLine across(const Shape& shape, const WorldPoint& middle, int depth) {
        const double grain_rad = 0.22 * std::sin(middle.x_m / 2900.0 + 1.0) +
                                 0.16 * std::sin(middle.y_m / 1700.0 - middle.x_m / 5100.0);
        const double along_x = std::cos(grain_rad), along_y = std::sin(grain_rad);
        double low_u = 1e30, high_u = -1e30, low_v = 1e30, high_v = -1e30;
        for (const WorldPoint& p : shape) {
            const double u = p.x_m * along_x + p.y_m * along_y, v = p.y_m * along_x - p.x_m * along_y;
            low_u = std::min(low_u, u);
            high_u = std::max(high_u, u);
            low_v = std::min(low_v, v);
            high_v = std::max(high_v, v);
        }
        const bool cut_u = high_u - low_u > (high_v - low_v) * (0.85 + 0.5 * make_.chance());
        const double share = 0.5 + 0.26 * (make_.chance() - 0.5);
        const double turn_rad =
            grain_rad + (depth < 3 ? 0.02 : 0.30) * (make_.chance() - 0.5) + (cut_u ? 0.0 : pi / 2);
        const double u = cut_u ? low_u + share * (high_u - low_u) : (low_u + high_u) / 2;
        const double v = cut_u ? (low_v + high_v) / 2 : low_v + share * (high_v - low_v);
        return {u * along_x - v * along_y, u * along_y + v * along_x, std::cos(turn_rad), std::sin(turn_rad)};
    }

    std::int32_t add(const Shape& shape) {
        FieldNode node;
        node.area_m2 = area_m2(shape);
        node.min_x_m = node.min_y_m = 1e30;
        node.max_x_m = node.max_y_m = -1e30;
        for (const WorldPoint& p : shape) {
            node.min_x_m = std::min(node.min_x_m, p.x_m);
            node.max_x_m = std::max(node.max_x_m, p.x_m);
            node.min_y_m = std::min(node.min_y_m, p.y_m);
            node.max_y_m = std::max(node.max_y_m, p.y_m);
        }
        node.corners = make_.store(shape);
        ground_.fields.push_back(node);
        return static_cast<std::int32_t>(ground_.fields.size()) - 1;
    }

    void join(std::int32_t parent, std::int32_t far_half, std::int32_t near_half) {
        FieldNode& node = ground_.fields[static_cast<std::size_t>(parent)];
        const FieldNode& a = ground_.fields[static_cast<std::size_t>(far_half)];
        const FieldNode& b = ground_.fields[static_cast<std::size_t>(near_half)];
        node.far_half = far_half;
        node.near_half = near_half;
        node.colour = mix(a.colour, b.colour, b.area_m2 / (a.area_m2 + b.area_m2));
    }

    void sow(std::int32_t node, const Shape& shape, double sight_m) {
        const double draw = make_.chance();
        const auto pick = [this](std::span<const Rgb> list) {
            const auto n = static_cast<std::size_t>(make_.chance() * static_cast<double>(list.size()));
            return scaled(list[n], 0.97 + 0.06 * make_.chance());
        };
        Field field{shape, {}, sight_m, Growth::pasture};
        const Growing& grown = places_.growing;
        if (draw < grown.pasture) {
            field.colour = pick(pasture);
        } else if (draw < grown.pasture + grown.ripe) {
            field.colour = pick(ripe);
            field.growth = Growth::rows;
        } else if (draw < grown.pasture + grown.ripe + grown.crop) {
            field.colour = pick(crop);
            field.growth = Growth::rows;
        } else if (draw < grown.pasture + grown.ripe + grown.crop + grown.earth) {
            field.colour = pick(earth);
            field.growth = Growth::rows;
        } else {
            field.colour = scaled(rgb_from_bytes(84, 100, 62), 0.95 + 0.1 * make_.chance());
            field.growth = Growth::wood;
        }
        ground_.fields[static_cast<std::size_t>(node)].colour = field.colour;
        if (sight_m < dressed_within_m) fields_.push_back(std::move(field));
    }

    GroundLayout& ground_;
    const RunwayView& runway_;
    const Places places_;
    GroundBuilder make_;
    std::vector<Field> fields_;
    std::vector<Boundary> boundaries_;
};

}  // namespace

double ground_height_m(const GroundLayout& ground, double x_m) {
    return ground.slope * std::clamp(x_m, 0.0, ground.runway_length_m);
}

GroundLayout make_ground(const RunwayView& runway) {
    GroundLayout ground;
    ground.slope = runway.slope;
    ground.runway_length_m = runway.length_m;
    Maker(ground, runway).make();
    return ground;
}

}  // namespace slopewise
