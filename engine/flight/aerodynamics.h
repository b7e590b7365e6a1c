// Lift and drag of the whole aeroplane: linear with flap, rounded through the stall, a flat plate
// beyond it, with ground effect on the induced drag.
#pragma once

#include "flight/aircraft.h"

namespace slopewise {

struct Coefficients {
    double lift = 0.0;
    double drag = 0.0;
};

// alpha_rad: any angle. wing_height_m: of the wing above the ground.
Coefficients coefficients(const Aircraft& aircraft, double alpha_rad, const FlapEffect& flap,
                          double wing_height_m);

// Angle of attack (rad) of greatest lift with this flap.
double stall_alpha_rad(const Aircraft& aircraft, const FlapEffect& flap);

// Share of the free-air induced drag left at a height over span (>= 0): Wieselsberger's factor as
// Torenbeek gives it (formula from memory), 1 - (1 - 1.32 h/b) / (1.05 + 7.4 h/b), 1 from h/b = 0.758 up.
// Chosen over McCormick's because its figures match the training handbook's (23 % less drag at a
// quarter of the span, 48 % less at a tenth).
double induced_drag_share(double height_over_span);

}  // namespace slopewise
