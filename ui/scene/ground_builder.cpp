#include "ui/scene/ground_builder.h"

#include <algorithm>
#include <cmath>

#include "ui/scene/ground_places.h"

namespace slopewise {

namespace {

constexpr Rgb roofs[] = {rgb_from_bytes(112, 104, 100), rgb_from_bytes(136, 104, 86),
                         rgb_from_bytes(98, 98, 100), rgb_from_bytes(126, 112, 98)};
constexpr Rgb walls[] = {rgb_from_bytes(206, 197, 176), rgb_from_bytes(186, 172, 150),
                         rgb_from_bytes(168, 142, 120), rgb_from_bytes(214, 208, 194)};

}  // namespace

bool GroundBuilder::clear(double x_m, double y_m, double margin_m) const {
    return is_free(places_, x_m, y_m, margin_m);
}

bool GroundBuilder::on_strip(const WorldPoint& p, double margin_m) const {
    return std::abs(p.y_m) < places_.strip_half_width_m + margin_m && p.x_m > places_.strip_from_m &&
           p.x_m < places_.strip_to_m;
}

bool GroundBuilder::low_ground(const WorldPoint& p) {
    return std::abs(p.y_m) < 70.0 && p.x_m > -2600.0 && p.x_m < 0;
}

WorldPoint GroundBuilder::grounded(WorldPoint p) const {
    p.z_m = ground_height_m(ground_, p.x_m);
    return p;
}

WorldPoint GroundBuilder::anywhere_in(const Shape& shape) {
    const std::size_t n = shape.size();
    const auto pick = [this, n] { return static_cast<std::size_t>(chance() * static_cast<double>(n)) % n; };
    const WorldPoint &a = shape[pick()], &b = shape[pick()], middle = middle_of(shape);
    const double s = chance(), t = std::sqrt(chance());
    return {middle.x_m + t * (a.x_m + s * (b.x_m - a.x_m) - middle.x_m),
            middle.y_m + t * (a.y_m + s * (b.y_m - a.y_m) - middle.y_m), 0};
}

void GroundBuilder::patch(const Shape& shape, const Rgb& colour, double alpha, double seen_within_m,
                          bool faint) {
    GroundPatch p{store(shape), 1e30, -1e30, colour, alpha, seen_within_m, faint};
    for (const WorldPoint& corner : shape) {
        p.min_x_m = std::min(p.min_x_m, corner.x_m);
        p.max_x_m = std::max(p.max_x_m, corner.x_m);
    }
    ground_.patches.push_back(p);
}

void GroundBuilder::tuft(const WorldPoint& p, double radius_m, const Rgb& colour) {
    ground_.tufts.push_back({grounded(p), radius_m, colour});
}

void GroundBuilder::tree(const WorldPoint& foot, double height_m, double seen_within_m) {
    const double tone = 0.88 + 0.26 * chance();
    ground_.trees.push_back(
        {grounded(foot), height_m * (0.9 + 0.25 * chance()), height_m * (0.36 + 0.14 * chance()),
         scaled(mix(foliage, rgb_from_bytes(104, 112, 62), 0.5 * chance()), tone), seen_within_m, true});
    stand(StandingThing::Kind::tree, foot.x_m, ground_.trees.size(), seen_within_m);
}

void GroundBuilder::crown(const WorldPoint& p, double wood_height_m, double wood_x_m) {
    constexpr double depth_m = 5.5;
    WorldPoint foot = grounded(p);
    foot.z_m += wood_height_m - 0.55 * depth_m;
    const double tone = 0.86 + 0.30 * chance();
    ground_.trees.push_back(
        {foot, depth_m * (0.9 + 0.3 * chance()), 3.0 + 2.2 * chance(), scaled(foliage, tone), 1500.0, false});
    stand(StandingThing::Kind::tree, wood_x_m - 0.01, ground_.trees.size(), 1700.0);
}

void GroundBuilder::hedge(Hedge h) {
    h.from = grounded(h.from);
    h.to = grounded(h.to);
    ground_.hedges.push_back(h);
    stand(StandingThing::Kind::hedge, (h.from.x_m + h.to.x_m) / 2, ground_.hedges.size());
}

void GroundBuilder::house(const WorldPoint& p, double heading_rad, double length_m, double width_m,
                          double wall_m, double ridge_m) {
    const auto pick = [this](std::span<const Rgb> list) {
        return list[static_cast<std::size_t>(chance() * static_cast<double>(list.size()))];
    };
    ground_.houses.push_back(
        {grounded(p), heading_rad, length_m, width_m, wall_m, ridge_m, pick(walls), pick(roofs)});
    stand(StandingThing::Kind::house, p.x_m, ground_.houses.size());
}

void GroundBuilder::pylon(const WorldPoint& foot, const WorldPoint* next, double height_m) {
    ground_.pylons.push_back(
        {grounded(foot), grounded(next != nullptr ? *next : foot), next != nullptr, height_m});
    stand(StandingThing::Kind::pylon, foot.x_m, ground_.pylons.size());
}

void GroundBuilder::aircraft(const WorldPoint& p, double heading_rad, double span_m, const Rgb& stripe) {
    ground_.aircraft.push_back({grounded(p), heading_rad, span_m, stripe});
    stand(StandingThing::Kind::aircraft, p.x_m, ground_.aircraft.size());
}

void GroundBuilder::lamp(WorldPoint p, double up_m, const Rgb& colour, double intensity_cd) {
    p = grounded(p);
    p.z_m += up_m;
    ground_.lamps.push_back({p, colour, intensity_cd});
}

void GroundBuilder::traffic(const Course& road) {
    ground_.traffic = road;
    for (WorldPoint& p : ground_.traffic.points) p = grounded(p);
}

void GroundBuilder::windsock(const WorldPoint& foot) { ground_.windsock = grounded(foot); }

void GroundBuilder::stand(StandingThing::Kind kind, double x_m, std::size_t count, double seen_within_m) {
    ground_.standing.push_back(
        {x_m, kind, static_cast<std::uint32_t>(count - 1), static_cast<float>(seen_within_m)});
}

void GroundBuilder::wood(const Shape& shape, double height_m) {
    ground_.woods.push_back({store(shape), height_m, scaled(foliage, 0.92)});
    stand(StandingThing::Kind::wood, middle_of(shape).x_m, ground_.woods.size());
}

Corners GroundBuilder::store(std::span<const WorldPoint> shape) {
    const Corners corners{static_cast<std::uint32_t>(ground_.corners.size()),
                          static_cast<std::uint32_t>(shape.size())};
    for (const WorldPoint& p : shape) ground_.corners.push_back(grounded(p));
    return corners;
}

void GroundBuilder::sort() {
    std::stable_sort(ground_.standing.begin(), ground_.standing.end(),
                     [](const StandingThing& a, const StandingThing& b) { return a.x_m > b.x_m; });
    std::stable_sort(ground_.lamps.begin(), ground_.lamps.end(),
                     [](const PointLight& a, const PointLight& b) { return a.place.x_m > b.place.x_m; });
    std::stable_sort(ground_.tufts.begin(), ground_.tufts.end(),
                     [](const Tuft& a, const Tuft& b) { return a.foot.x_m > b.foot.x_m; });
}

}  // namespace slopewise
