// The approach lights as drawn: discs at sub-pixel places, never smaller than can be seen, still countable.
#pragma once

#include "ui/scene/painter.h"
#include "ui/view.h"

namespace slopewise {

// Where a lamp falls on the screen; `seen` is false behind the eye or when it shows nothing.
struct LampOnScreen {
    ScreenPoint place;
    double pixels_per_m = 0;
    Rgb colour;
    double brightness = 0;                // decades above the least that is noticed
    bool seen = false, standing = false;  // standing: in front of the eye, lit or not
};

LampOnScreen lamp_on_screen(const Projection& projection, const LampView& lamp);

// Distance on the screen between the first two lamps in front of the eye (px); 0 with fewer than two.
double lamp_gap_px(const Projection& projection, const SceneView& scene);

// From red to white.
Rgb lamp_colour(double white_fraction);

void draw_lamps(const Painter& painter, const SceneView& scene);

// A plain disc with a soft edge of one pixel.
void draw_disc(const Painter& painter, const ScreenPoint& centre, double radius_px, const Rgb& colour,
               double alpha = 1.0);

}  // namespace slopewise
