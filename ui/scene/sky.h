// The sky down to the exact horizon, the sun's glare, and the dark that the landing light pushes back.
#pragma once

#include "ui/scene/painter.h"

namespace slopewise {

void draw_sky(const Painter& painter);

// What a low sun in the view washes out: over everything but lamps.
void draw_glare(const Painter& painter);

// Night over everything below the horizon, thinner where the landing light reaches. `height_m`: of the eye
// above the ground.
void draw_darkness(const Painter& painter, double height_m);

// Whether any surface is to be seen: always by day; by night only within the landing light.
bool lit_ground_in_view(const Painter& painter, double height_m);

// How far the landing light reaches (m): nothing beyond need be drawn by night.
inline constexpr double landing_light_reach_m = 420.0;

}  // namespace slopewise
