// The country around the runway: where every field, hedge, tree, road and house stands.
//
// It is made once for a runway by seeded rules and then held const. Nothing stands on the runway or
// its strip. Fields are the leaves of a tree of cuts, so that the far country can be painted by its
// mean colours (no shimmer) and the near country field by field.
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "ui/scene/colour.h"
#include "ui/scene/ground_places.h"
#include "ui/scene/point_light.h"
#include "ui/scene/projection.h"
#include "ui/view.h"

namespace slopewise {

// Corners lie in GroundLayout::corners.
struct Corners {
    std::uint32_t first = 0, count = 0;
};

struct FieldNode {
    Corners corners;
    double min_x_m = 0, max_x_m = 0, min_y_m = 0, max_y_m = 0;
    double area_m2 = 0;
    Rgb colour;                                  // a field's own; of a parent, the mean of its halves by area
    std::int32_t far_half = -1, near_half = -1;  // indices of the two halves; -1 in a field
};

// Something flat upon the fields: a band of crop, water, a road, mown grass.
struct GroundPatch {
    Corners corners;
    double min_x_m = 0, max_x_m = 0;
    Rgb colour;
    double alpha = 1;
    double seen_within_m = 0;  // fades out towards this distance
    bool faint = false;        // so near its surroundings in tone that it needs no soft edge
};

// A tuft, a worn spot, a molehill: what gives short grass its grain.
struct Tuft {
    WorldPoint foot;
    double radius_m = 0;
    Rgb colour;
};

// A straight run of hedge without a gap; also, taller, a line of trees on the skyline.
struct Hedge {
    WorldPoint from, to;
    double height_m = 0, width_m = 0;
    Rgb colour;
};

struct Tree {
    WorldPoint foot;
    double height_m = 0, radius_m = 0;
    Rgb colour;
    double seen_within_m = 0;
    bool alone = true;  // false in a wood: no shadow of its own
};

// A stand of trees too dense to draw one by one: sides and a top; its edge trees are Trees.
struct Wood {
    Corners corners;
    double height_m = 0;
    Rgb colour;
};

// A box with a ridged roof.
struct House {
    WorldPoint middle;
    double heading_rad = 0;  // of the ridge, from the landing direction towards the right
    double length_m = 0, width_m = 0, wall_m = 0, ridge_m = 0;
    Rgb wall, roof;
};

// A lattice mast of a power line, and the wires to the next.
struct Pylon {
    WorldPoint foot, next_foot;
    bool wired = false;
    double height_m = 0;
};

struct ParkedAircraft {
    WorldPoint place;
    double heading_rad = 0;  // of the nose, from the landing direction towards the right
    double span_m = 0;
    Rgb stripe;
};

// Everything that stands up, farthest along the approach first: that is the order to paint in.
struct StandingThing {
    enum class Kind : std::uint8_t { hedge, tree, wood, house, pylon, aircraft };
    double x_m = 0;
    Kind kind = Kind::tree;
    std::uint32_t index = 0;
    float seen_within_m = 1e9f;  // the thing's own, here so that most are passed over at once
};

struct GroundLayout {
    std::vector<WorldPoint> corners;
    std::vector<FieldNode> fields;     // the first is the root
    std::vector<GroundPatch> patches;  // in the order to paint
    std::vector<Tuft> tufts;           // by x
    std::vector<Hedge> hedges;
    std::vector<Tree> trees;
    std::vector<Wood> woods;
    std::vector<House> houses;
    std::vector<Pylon> pylons;
    std::vector<ParkedAircraft> aircraft;
    std::vector<StandingThing> standing;
    std::vector<PointLight> lamps;          // windows and street lamps, farthest first
    Course traffic;                         // the road that vehicles drive along
    WorldPoint windsock;                    // foot of its mast
    double slope = 0, runway_length_m = 0;  // for the height of the ground

    std::span<const WorldPoint> at(const Corners& c) const { return {corners.data() + c.first, c.count}; }
};

GroundLayout make_ground(const RunwayView& runway);

// Height of the ground (m): level before the threshold, the runway's slope along it, level again beyond.
double ground_height_m(const GroundLayout& ground, double x_m);

}  // namespace slopewise
