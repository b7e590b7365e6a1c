// A lamp far off: a point whose size and glow follow the illuminance that reaches the eye.
#pragma once

#include <span>

#include "ui/scene/painter.h"

namespace slopewise {

struct PointLight {
    WorldPoint place;
    Rgb colour;
    double intensity_cd = 0;
};

// Decades of illuminance above the least that is noticed (Allard's law); 0 or less: unseen.
double decades_seen(const Light& light, double intensity_cd, double distance_m);

// `share`: of the intensity, for lamps that are turned down.
void draw_point_light(const Painter& painter, const PointLight& lamp, double share = 1.0);

// The same on the screen: `decades` as above, at most `largest_px` in radius.
void draw_lit_point(const Painter& painter, const ScreenPoint& place, const Rgb& colour, double decades,
                    double largest_px);

}  // namespace slopewise
