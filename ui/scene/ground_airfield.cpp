#include "ui/scene/ground_airfield.h"

#include <algorithm>
#include <cmath>

#include "base/units.h"

namespace slopewise {

namespace {

constexpr double always_m = 1e9;  // seen from any distance
constexpr Rgb taxiway = rgb_from_bytes(128, 128, 124);
constexpr Rgb apron = rgb_from_bytes(142, 141, 135);
constexpr Rgb yellow = rgb_from_bytes(206, 172, 84);

void box(GroundBuilder& make, double from_x_m, double to_x_m, double from_y_m, double to_y_m,
         const Rgb& colour, double alpha = 1.0, double seen_within_m = always_m, bool faint = false) {
    make.patch({{from_x_m, from_y_m, 0}, {to_x_m, from_y_m, 0}, {to_x_m, to_y_m, 0}, {from_x_m, to_y_m, 0}},
               colour, alpha, seen_within_m, faint);
}

// Mown in stripes along the runway.
void stripes(GroundBuilder& make) {
    const double length_m = make.runway().length_m, edge_m = make.runway().width_m / 2 + 5.0;
    const double cuts_m[] = {-strip_overrun_m, 0.0, length_m, length_m + strip_overrun_m};
    for (std::size_t i = 1; i < std::size(cuts_m); ++i) {
        for (double y = edge_m; y + 13.0 < make.places().strip_half_width_m; y += 26.0) {
            for (const double side : {-1.0, 1.0})
                box(make, cuts_m[i - 1], cuts_m[i], side * y, side * (y + 13.0), rgb_from_bytes(125, 141, 88),
                    0.55, always_m, true);
        }
    }
}

Rgb grass_tone(double shade) {
    if (shade < 0.6) return rgb_from_bytes(103, 120, 70);
    return shade < 0.85 ? rgb_from_bytes(157, 166, 113) : rgb_from_bytes(152, 143, 103);
}

// The grass has its grain: most of it small, a little of it broad; densest where the eye comes lowest, so
// that sinking is seen.
void grass(GroundBuilder& make) {
    const double half_m = make.places().strip_half_width_m, clear_m = make.runway().width_m / 2 + 3.0;
    const auto sprinkle = [&](int count, double reach_m, double least_m, double most_m) {
        for (int i = 0; i < count; ++i) {
            const double along = make.chance(), size = make.chance();
            const double x = -strip_overrun_m + (reach_m + strip_overrun_m) * along * (0.35 + 0.65 * along);
            const double y = (make.chance() - 0.5) * 2.0 * half_m;
            const double radius_m = least_m + (most_m - least_m) * size * size;
            const double shade = make.chance();
            const bool on_runway = x > -6.0 - radius_m && std::abs(y) < clear_m + radius_m;
            if (!on_runway && x < make.runway().length_m) make.tuft({x, y, 0}, radius_m, grass_tone(shade));
        }
    };
    const double area = half_m / 150.0;
    sprinkle(static_cast<int>(1500 * area), 1100.0, 0.5, 2.7);
    sprinkle(static_cast<int>(1200 * area), 520.0, 0.25, 0.7);
}

struct Site {  // of the apron: where it begins along the runway, and which side
    double from_x_m, length_m, inner_y_m, depth_m, side;
};

Site site_of(const GroundBuilder& make) {
    const RunwayView& runway = make.runway();
    const double inner_m = make.places().strip_half_width_m + 40.0;
    if (runway.length_m < 1000.0) return {330, 120, inner_m, 45, make.places().apron_side};
    if (runway.length_m < 2000.0) return {430, 270, inner_m, 66, make.places().apron_side};
    return {900, 460, inner_m, 90, make.places().apron_side};
}

void pavement(GroundBuilder& make, const Site& s) {
    const double runway_edge_m = make.runway().width_m / 2 - 1,
                 half_m = make.runway().width_m < 23 ? 4.0 : 6.0;
    const double link_x_m = s.from_x_m + s.length_m * 0.5;
    const auto across = [&](double from_x, double to_x, double from_y, double to_y, const Rgb& colour,
                            double alpha, double seen_m) {
        box(make, from_x, to_x, s.side * from_y, s.side * to_y, colour, alpha, seen_m);
    };
    across(link_x_m - half_m, link_x_m + half_m, runway_edge_m, s.inner_y_m + 4, taxiway, 1.0, always_m);
    across(s.from_x_m, s.from_x_m + s.length_m, s.inner_y_m, s.inner_y_m + s.depth_m, apron, 1.0, always_m);
    if (make.runway().length_m >= 1400.0) {
        // A taxiway beside the runway, from the threshold to the apron.
        const double y_m = s.inner_y_m - 18.0;
        across(-half_m, s.from_x_m + s.length_m, y_m - half_m, y_m + half_m, taxiway, 1.0, always_m);
        across(-half_m, half_m, runway_edge_m, y_m + half_m, taxiway, 1.0, always_m);
        across(0, s.from_x_m + s.length_m, y_m - 0.3, y_m + 0.3, yellow, 0.8, 900.0);
    }
    across(link_x_m - 0.3, link_x_m + 0.3, runway_edge_m, s.inner_y_m + s.depth_m * 0.5, yellow, 0.8, 900.0);
}

void hangars(GroundBuilder& make, const Site& s) {
    const double back_m = s.inner_y_m + s.depth_m + 26.0;
    const auto hangar = [&](double share, double aside_m, double length_m, double width_m, double wall_m,
                            double ridge_m) {
        make.house({s.from_x_m + share * s.length_m, s.side * (back_m + aside_m), 0}, 0.0, length_m, width_m,
                   wall_m, ridge_m);
    };
    hangar(0.15, 4, 34, 26, 7.0, 10.0);
    hangar(0.40, 2, 30, 24, 6.5, 9.0);
    hangar(0.78, -4, 18, 11, 3.6, 6.0);
    if (s.length_m > 200) hangar(0.62, 8, 44, 30, 8.0, 11.0);
    if (s.length_m > 400) {
        hangar(0.92, 6, 46, 34, 9.0, 12.5);
        make.house({s.from_x_m + 0.70 * s.length_m, s.side * (back_m - 10), 0}, 0.0, 9, 9, 15.0,
                   16.5);  // tower
    }
    for (int i = 0; i < 7; ++i) {
        const double x = s.from_x_m - 40 + make.chance() * (s.length_m + 80);
        make.tree({x, s.side * (back_m + 34 + 14 * make.chance()), 0}, 8.0, 3600.0);
    }
    for (double share = 0.1; share < 1.0; share += 0.27)
        make.lamp({s.from_x_m + share * s.length_m, s.side * (s.inner_y_m + s.depth_m), 0}, 6.0,
                  rgb_from_bytes(255, 218, 160), 160.0);
}

void parked(GroundBuilder& make, const Site& s) {
    constexpr Rgb stripe_tones[] = {rgb_from_bytes(52, 84, 128), rgb_from_bytes(70, 76, 82),
                                    rgb_from_bytes(40, 98, 104), rgb_from_bytes(176, 128, 62)};
    const int count = s.length_m > 400 ? 9 : (s.length_m > 200 ? 6 : 4);
    for (int i = 0; i < count; ++i) {
        if (make.chance() < 0.15) continue;
        const double x = s.from_x_m + 14 + (s.length_m - 28) * i / (count - 1);
        const double y = s.inner_y_m + s.depth_m * 0.62;
        const double heading = -s.side * pi / 2 + 0.25 * (make.chance() - 0.5);
        make.aircraft({x, s.side * y, 0}, heading, 9.5 + 2.0 * make.chance(), stripe_tones[i % 4]);
    }
}

}  // namespace

void dress_airfield(GroundBuilder& make) {
    stripes(make);
    grass(make);
    const Site site = site_of(make);
    pavement(make, site);
    hangars(make, site);
    parked(make, site);
    // Clear of the lights, where the pilot finds it beside the touchdown zone.
    make.windsock({make.runway().aim_distance_m + 40.0,
                   site.side * std::min(make.places().strip_half_width_m - 12.0, 85.0), 0});
}

}  // namespace slopewise
