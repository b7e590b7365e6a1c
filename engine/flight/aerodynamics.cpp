#include "flight/aerodynamics.h"

#include "base/exact_math.h"
#include "base/interpolate.h"
#include "base/units.h"

namespace slopewise {
namespace {

// Beyond the stall the wing turns into a flat plate over this much more of (linear) lift coefficient.
constexpr double plate_range = 1.2;

// The flow begins to leave the wing well before the stall, and drag grows faster than the polar's parabola
// from this share of the greatest lift on: the back side of the power curve. Common practice, no source.
constexpr double separation_onset = 0.7;

double separation_drag(const Wing& wing, double lift, double max_lift) {
    const double beyond = lift - separation_onset * max_lift;
    return beyond > 0.0 ? wing.separation_drag * square(beyond) : 0.0;
}

// The lift curve with its top rounded by a parabola of half-width `rounding` about the corner where the
// straight line would meet the greatest lift: value and slope are continuous.
double rounded_lift(double linear, double max_lift, double rounding) {
    const double start = max_lift - rounding;
    if (linear <= start) return linear;
    if (linear >= max_lift + rounding) return max_lift;
    return linear - square(linear - start) / (4.0 * rounding);
}

}  // namespace

double induced_drag_share(double height_over_span) {
    if (height_over_span >= 1.0 / 1.32) return 1.0;
    const double h = height_over_span > 0.0 ? height_over_span : 0.0;
    return 1.0 - (1.0 - 1.32 * h) / (1.05 + 7.4 * h);
}

double stall_alpha_rad(const Aircraft& aircraft, const FlapEffect& flap) {
    const Wing& wing = aircraft.wing;
    return (flap.max_lift + wing.stall_rounding - wing.lift_at_zero - flap.lift_increment) /
           wing.lift_slope_per_rad;
}

Coefficients coefficients(const Aircraft& aircraft, double alpha_rad, const FlapEffect& flap,
                          double wing_height_m) {
    const Wing& wing = aircraft.wing;
    const double linear = wing.lift_at_zero + flap.lift_increment + wing.lift_slope_per_rad * alpha_rad;
    // Inverted stall: the same curve mirrored, without the flap's help.
    const double least_lift = -0.8 * aircraft.flaps[0].max_lift;
    const double attached = linear >= 0.0 ? rounded_lift(linear, flap.max_lift, wing.stall_rounding)
                                          : -rounded_lift(-linear, -least_lift, wing.stall_rounding);

    const double excess = linear >= 0.0 ? linear - flap.max_lift - wing.stall_rounding
                                        : least_lift - wing.stall_rounding - linear;
    const double plate = smooth_step(excess, 0.0, plate_range);  // 0 attached ... 1 a flat plate

    const double induced = induced_drag_share(wing_height_m / wing.span_m) * square(attached) * wing.area_m2 /
                           (pi * wing.oswald * square(wing.span_m));
    Coefficients result{attached, wing.zero_lift_drag + flap.drag_increment + induced +
                                      separation_drag(wing, attached, flap.max_lift)};
    if (plate > 0.0) {
        const double sine = exact::sin(alpha_rad), cosine = exact::cos(alpha_rad);
        result.lift = lerp(attached, 2.0 * sine * cosine, plate);  // Newtonian flat plate
        result.drag += plate * 2.0 * square(sine);
    }
    return result;
}

}  // namespace slopewise
