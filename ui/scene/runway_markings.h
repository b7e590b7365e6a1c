// The runway and its paint: flat polygons in world metres, ordered back to front, following the slope.
#pragma once

#include <span>
#include <vector>

#include "ui/scene/colour.h"
#include "ui/scene/painter.h"
#include "ui/view.h"

namespace slopewise {

struct RunwayMark {
    enum class Kind { shoulder, asphalt, wear, threshold_stripe, digit, centreline, aiming_point, edge_line };

    Kind kind = Kind::asphalt;
    std::uint32_t first_corner = 0, corner_count = 0;
    Rgb colour;
    double alpha = 1;
    double seen_within_m = 1e9;  // fades out towards this distance
};

struct RunwayPicture {
    std::vector<WorldPoint> corners;
    std::vector<RunwayMark> marks;

    std::span<const WorldPoint> at(const RunwayMark& mark) const {
        return {corners.data() + mark.first_corner, mark.corner_count};
    }
};

// Number of threshold stripes for a runway width (m): AIM 2-3-3 h, the widest row that the runway reaches.
int threshold_stripe_count(double width_m);

RunwayPicture make_runway_picture(const RunwayView& runway);

void draw_runway(const Painter& painter, const RunwayPicture& picture);

}  // namespace slopewise
