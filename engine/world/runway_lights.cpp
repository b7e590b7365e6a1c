#include "world/runway_lights.h"

#include <cmath>

#include "base/interpolate.h"

namespace slopewise {
namespace {

constexpr double edge_spacing_m = 60.0;
constexpr double edge_offset_m = 1.5;  // outside the edge; not more than 3 m (Annex 14 5.3.9, from memory)
constexpr int least_end_lights = 6;
constexpr double end_spacing_m = 3.0;  // of the threshold's row (Annex 14 5.3.10, from memory)
constexpr double approach_reach_m = 420.0, approach_spacing_m = 60.0;
constexpr double crossbar_at_m = 300.0, crossbar_half_m = 15.0, crossbar_spacing_m = 3.0;

// Medium-intensity lights of a small aerodrome and its approach: common practice, no source.
constexpr double edge_cd = 500.0, threshold_cd = 600.0, end_cd = 250.0, approach_cd = 1000.0;

class Row {
public:
    explicit Row(const RunwayOutline& outline) : outline_(outline) {}

    void add(double x_m, double y_m, RunwayLight::Colour colour, double intensity_cd) {
        const double z_m = outline_.slope * clamp(x_m, 0.0, outline_.length_m);
        lights_.push_back({{x_m, y_m, z_m}, colour, intensity_cd});
    }

    // Across the runway, ends included.
    void across(double x_m, double half_m, int count, RunwayLight::Colour colour, double intensity_cd) {
        for (int i = 0; i < count; ++i)
            add(x_m, lerp(-half_m, half_m, double(i) / (count - 1)), colour, intensity_cd);
    }

    std::vector<RunwayLight> take() { return std::move(lights_); }

private:
    const RunwayOutline& outline_;
    std::vector<RunwayLight> lights_;
};

void add_approach(Row& row) {
    for (double x_m = approach_reach_m; x_m > 0.0; x_m -= approach_spacing_m)
        row.add(-x_m, 0.0, RunwayLight::Colour::white, approach_cd);
    for (double y_m = crossbar_spacing_m; y_m <= crossbar_half_m; y_m += crossbar_spacing_m) {
        for (const double side : {-1.0, 1.0})
            row.add(-crossbar_at_m, side * y_m, RunwayLight::Colour::white, approach_cd);
    }
}

void add_edges(Row& row, const RunwayOutline& outline) {
    const double half_m = outline.width_m / 2.0;
    const int by_width = static_cast<int>(outline.width_m / end_spacing_m) + 1;
    const int end_lights = by_width > least_end_lights ? by_width : least_end_lights;
    row.across(-1.0, half_m, end_lights, RunwayLight::Colour::green, threshold_cd);
    const int gaps = static_cast<int>(std::ceil(outline.length_m / edge_spacing_m));
    for (int i = 1; i < gaps; ++i) {  // the ends have lights of their own
        for (const double side : {-1.0, 1.0})
            row.add(outline.length_m * i / gaps, side * (half_m + edge_offset_m), RunwayLight::Colour::white,
                    edge_cd);
    }
    row.across(outline.length_m + 1.0, half_m, least_end_lights, RunwayLight::Colour::red, end_cd);
}

}  // namespace

std::vector<RunwayLight> make_runway_lights(const RunwayOutline& outline) {
    Row row(outline);
    if (outline.approach_lights) add_approach(row);
    if (outline.edge_lights) add_edges(row, outline);
    return row.take();
}

double brightness_setting(Background background) {
    switch (background) {
    case Background::day: return 1.0;
    case Background::dusk: return 0.6;
    case Background::night: return 0.3;
    }
    return 1.0;
}

}  // namespace slopewise
