// Puts things into a ground layout one by one, at the height of the ground, by a seeded chance.
#pragma once

#include "base/random.h"
#include "ui/scene/ground_layout.h"
#include "ui/scene/shape.h"

namespace slopewise {

inline constexpr Rgb foliage = rgb_from_bytes(82, 99, 58);

class GroundBuilder {
public:
    GroundBuilder(GroundLayout& ground, const RunwayView& runway, const Places& places)
        : ground_(ground),
          runway_(runway),
          places_(places),
          random_{0x510BE + 7919 * runway.countryside.seed} {}

    double chance() { return next_uniform(random_); }  // 0 ... 1
    const RunwayView& runway() const { return runway_; }
    const Places& places() const { return places_; }

    // Where things may stand.
    bool clear(double x_m, double y_m, double margin_m) const;
    bool on_strip(const WorldPoint& p, double margin_m) const;
    static bool low_ground(const WorldPoint& p);  // nothing tall: the last mile and a half of the path

    // A random place that lies in a convex shape, or at worst on its rim.
    WorldPoint anywhere_in(const Shape& shape);

    Corners store(std::span<const WorldPoint> shape);
    void patch(const Shape& shape, const Rgb& colour, double alpha, double seen_within_m, bool faint = false);
    void tuft(const WorldPoint& p, double radius_m, const Rgb& colour);
    void tree(const WorldPoint& foot, double height_m, double seen_within_m);
    // The top of a tree in a wood of this height, painted upon the wood whose middle is at `wood_x_m`.
    void crown(const WorldPoint& p, double wood_height_m, double wood_x_m);
    void hedge(Hedge hedge);
    void wood(const Shape& shape, double height_m);
    void house(const WorldPoint& p, double heading_rad, double length_m, double width_m, double wall_m,
               double ridge_m);

    void pylon(const WorldPoint& foot, const WorldPoint* next, double height_m);
    void aircraft(const WorldPoint& p, double heading_rad, double span_m, const Rgb& stripe);
    void lamp(WorldPoint p, double up_m, const Rgb& colour, double intensity_cd);
    void traffic(const Course& road);
    void windsock(const WorldPoint& foot);

    // Brings everything into the order of painting: the last thing to do.
    void sort();

private:
    WorldPoint grounded(WorldPoint p) const;
    void stand(StandingThing::Kind kind, double x_m, std::size_t count, double seen_within_m = 1e9);

    GroundLayout& ground_;
    const RunwayView& runway_;
    const Places& places_;
    Random random_;
};

}  // namespace slopewise
