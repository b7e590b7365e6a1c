#include "ui/scene/shape.h"

#include <cmath>

namespace slopewise {

namespace {

double side_m(const GroundLine& line, const WorldPoint& p) {
    return (p.x_m - line.x_m) * line.normal_x + (p.y_m - line.y_m) * line.normal_y;
}

WorldPoint between(const WorldPoint& a, const WorldPoint& b, double share) {
    return {a.x_m + share * (b.x_m - a.x_m), a.y_m + share * (b.y_m - a.y_m),
            a.z_m + share * (b.z_m - a.z_m)};
}

}  // namespace

double area_m2(const Shape& shape) {
    double twice = 0;
    for (std::size_t i = 0; i < shape.size(); ++i) {
        const WorldPoint& a = shape[i];
        const WorldPoint& b = shape[(i + 1) % shape.size()];
        twice += a.x_m * b.y_m - b.x_m * a.y_m;
    }
    return std::abs(twice) / 2;
}

WorldPoint middle_of(const Shape& shape) {
    WorldPoint sum;
    for (const WorldPoint& p : shape) {
        sum.x_m += p.x_m;
        sum.y_m += p.y_m;
        sum.z_m += p.z_m;
    }
    const auto n = static_cast<double>(shape.size());
    return {sum.x_m / n, sum.y_m / n, sum.z_m / n};
}

std::pair<Shape, Shape> cut(const Shape& shape, const GroundLine& line) {
    Shape positive, negative;
    for (std::size_t i = 0; i < shape.size(); ++i) {
        const WorldPoint& a = shape[i];
        const WorldPoint& b = shape[(i + 1) % shape.size()];
        const double side_a = side_m(line, a), side_b = side_m(line, b);
        (side_a >= 0 ? positive : negative).push_back(a);
        if ((side_a >= 0) != (side_b >= 0)) {
            const WorldPoint crossing = between(a, b, side_a / (side_a - side_b));
            positive.push_back(crossing);
            negative.push_back(crossing);
        }
    }
    return {positive, negative};
}

bool crossings(const Shape& shape, const GroundLine& line, WorldPoint& first, WorldPoint& second) {
    int found = 0;
    for (std::size_t i = 0; i < shape.size(); ++i) {
        const WorldPoint& a = shape[i];
        const WorldPoint& b = shape[(i + 1) % shape.size()];
        const double side_a = side_m(line, a), side_b = side_m(line, b);
        if ((side_a >= 0) == (side_b >= 0)) continue;
        (found++ == 0 ? first : second) = between(a, b, side_a / (side_a - side_b));
    }
    return found == 2;
}

bool contains(const Shape& shape, double x_m, double y_m) {
    bool left = false, right = false;
    for (std::size_t i = 0; i < shape.size(); ++i) {
        const WorldPoint& a = shape[i];
        const WorldPoint& b = shape[(i + 1) % shape.size()];
        const double turn = (b.x_m - a.x_m) * (y_m - a.y_m) - (b.y_m - a.y_m) * (x_m - a.x_m);
        (turn >= 0 ? left : right) = true;
    }
    return !(left && right);
}

}  // namespace slopewise
