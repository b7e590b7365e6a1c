// The places of a country: its roads, water, villages and pylons, what grows there, and what must keep clear.
#pragma once

#include <vector>

#include "ui/scene/projection.h"
#include "ui/view.h"

namespace slopewise {

// A line across the country with a width: a road or a river.
struct Course {
    std::vector<WorldPoint> points;
    double half_width_m = 0;
};

// An oval of water.
struct Pond {
    WorldPoint middle;
    double reach_x_m = 0, reach_y_m = 0;
};

// Middle and radius of each group of houses.
struct Village {
    WorldPoint middle;
    double radius_m = 0;
    int houses = 0;
};

// What is sown: shares of the fields (what is left is wood), their size, and what divides them.
struct Growing {
    double pasture = 0.5, ripe = 0.22, crop = 0.15, earth = 0.06;
    double field_m2 = 36000;
    double hedge_share = 0.78, tree_row_share = 0.22;
    double woods_clear_of_final_m = 330;
    int skyline_trees = 70;  // rows of them
};

struct Places {
    std::vector<Course> roads;  // the first crosses under final and carries traffic
    std::vector<Course> rivers;
    std::vector<Pond> ponds;
    std::vector<Village> villages;
    std::vector<WorldPoint> pylons;  // a row with wires between
    std::vector<WorldPoint> shore;   // by x; the sea lies to the right of it; empty inland
    Growing growing;
    double apron_side = 1;  // +1: hangars to the right of the runway
    double strip_half_width_m = 0, strip_from_m = 0, strip_to_m = 0;
};

Places places_of(const RunwayView& runway);

// The runway's strip and the mown ground around it: half its width by the runway's (the common practice of
// small and large fields, no source), and its reach beyond either end.
double strip_half_width_m(double runway_width_m);
inline constexpr double strip_overrun_m = 180.0;

// Distance on the ground from a point to the nearest point of a course's middle line (m).
double distance_to_m(const Course& course, double x_m, double y_m);

// Where the shore lies at x (m to the right); far away inland.
double shore_y_m(const Places& places, double x_m);

// Whether a thing may stand here: off the strip, the roads, the water, and low under the last half mile of
// the approach.
bool is_free(const Places& places, double x_m, double y_m, double margin_m);

}  // namespace slopewise
