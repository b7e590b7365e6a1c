#include <cmath>

#include "base/units.h"
#include "flight/aerodynamics.h"
#include "tests/check.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

constexpr double free_air_m = 500.0;

Coefficients clean(const Aircraft& aircraft, double alpha_rad) {
    return coefficients(aircraft, alpha_rad, flap_effect(aircraft, 0.0), free_air_m);
}

}  // namespace

TEST_CASE("aerodynamics: below the stall lift is a straight line and drag the polar's parabola") {
    const Aircraft aircraft = textbook_aircraft(0.3);
    for (const double alpha_deg : {-8.0, -3.0, 0.0, 4.0, 10.0}) {
        const Coefficients at = clean(aircraft, rad_from_deg(alpha_deg));
        const double lift = 0.3 + 5.0 * rad_from_deg(alpha_deg);
        CHECK_NEAR(at.lift, lift, 1e-12);  // rounding
        CHECK_NEAR(at.drag, 0.025 + lift * lift / (pi * 0.8 * 10.912 * 10.912 / 16.165), 1e-12);
    }
}

TEST_CASE("aerodynamics: the greatest lift is the flap's, at the stalling angle and nowhere else") {
    for (const Aircraft& aircraft : shipped().aircraft) {
        for (int flap = 0; flap < aircraft.flap_count; ++flap) {
            const FlapEffect effect = flap_effect(aircraft, flap);
            const double stalling = stall_alpha_rad(aircraft, effect);
            CHECK_NEAR(coefficients(aircraft, stalling, effect, free_air_m).lift, effect.max_lift,
                       1e-12);  // rounding
            double greatest = 0.0, at_rad = 0.0;
            for (int i = -1800; i <= 1800; ++i) {
                const double lift = coefficients(aircraft, rad_from_deg(i * 0.1), effect, free_air_m).lift;
                if (lift > greatest) {
                    greatest = lift;
                    at_rad = rad_from_deg(i * 0.1);
                }
            }
            CHECK(greatest <= effect.max_lift + 1e-12);
            CHECK_NEAR(deg_from_rad(at_rad), deg_from_rad(stalling), 0.11);  // the grid's step
        }
    }
}

TEST_CASE("aerodynamics: lift and drag change without jumps at any angle") {
    for (const Aircraft& aircraft : shipped().aircraft) {
        for (int flap = 0; flap < aircraft.flap_count; ++flap) {
            const FlapEffect effect = flap_effect(aircraft, flap);
            Coefficients before = coefficients(aircraft, -pi, effect, free_air_m);
            double lift_step = 0.0, drag_step = 0.0;
            for (int i = -17999; i <= 18000; ++i) {
                const Coefficients now = coefficients(aircraft, rad_from_deg(i * 0.01), effect, free_air_m);
                lift_step = std::fmax(lift_step, std::abs(now.lift - before.lift));
                drag_step = std::fmax(drag_step, std::abs(now.drag - before.drag));
                before = now;
            }
            // A hundredth of a degree times the steepest slope: for drag less than 6 a radian. Lift falls
            // beyond the stall by up to 1.5 / 1.2 of its gap to the flat plate (about 1) for each unit of
            // linear lift, so at most half again as fast as it rose. A jump would be many times this.
            CHECK(lift_step <= 1.5 * aircraft.wing.lift_slope_per_rad * rad_from_deg(0.01));
            CHECK(drag_step <= 6.0 * rad_from_deg(0.01));
        }
    }
}

TEST_CASE("aerodynamics: past the stall lift falls and drag rises") {
    const Aircraft& aircraft = tourer();
    const FlapEffect flap = flap_effect(aircraft, landing_flap(aircraft));
    const double stalling = stall_alpha_rad(aircraft, flap);
    const Coefficients top = coefficients(aircraft, stalling, flap, free_air_m);
    Coefficients before = top;
    for (const double beyond_deg : {4.0, 8.0, 12.0}) {
        const Coefficients now =
            coefficients(aircraft, stalling + rad_from_deg(beyond_deg), flap, free_air_m);
        CHECK(now.lift < before.lift);
        CHECK(now.drag > before.drag);
        before = now;
    }
}

TEST_CASE("aerodynamics: broadside on, the aeroplane is a flat plate") {
    // Newtonian flat plate: no lift, drag coefficient 2, plus what it drags anyway.
    const Coefficients broadside = clean(textbook_aircraft(0.3), pi / 2.0);
    CHECK_NEAR(broadside.lift, 0.0, 1e-12);  // rounding
    CHECK(broadside.drag >= 2.0);
    CHECK(broadside.drag < 2.3);
}

TEST_CASE("aerodynamics: drag is never negative, whatever the angle and the flap") {
    const Aircraft& aircraft = tourer();
    double least = 1.0;
    for (int flap = 0; flap <= 8; ++flap) {
        for (int i = -180; i <= 180; ++i) {
            const FlapEffect effect = flap_effect(aircraft, flap * 0.25);
            least = std::fmin(least, coefficients(aircraft, rad_from_deg(i), effect, 1.0).drag);
        }
    }
    CHECK(least >= aircraft.wing.zero_lift_drag);
}

TEST_CASE("aerodynamics: drag grows faster than the polar from seven tenths of the greatest lift on") {
    Aircraft aircraft = textbook_aircraft(0.3);
    const Coefficients without = clean(aircraft, rad_from_deg(14.0));
    aircraft.wing.separation_drag = 0.6;
    const Coefficients with = clean(aircraft, rad_from_deg(14.0));
    const double beyond = with.lift - 0.7 * 1.6;
    CHECK(beyond > 0.0);
    CHECK(with.lift == without.lift);
    CHECK_NEAR(with.drag - without.drag, 0.6 * beyond * beyond, 1e-12);  // rounding
    CHECK(clean(aircraft, 0.0).drag == clean(textbook_aircraft(0.3), 0.0).drag);
}
