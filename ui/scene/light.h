// The light of the hour as the painter needs it: what it does to every colour, where the sun stands, how far
// lamps carry, and the colours of the sky and of the air.
#pragma once

#include <array>

#include "ui/scene/colour.h"
#include "ui/scene/projection.h"
#include "ui/view.h"

namespace slopewise {

// What the air adds with distance.
struct Haze {
    Rgb colour;
    double extinction_per_m = 0;
};

// Share of a thing's own contrast that is left at a distance (Koschmieder: exp(-extinction * distance)).
double clearness(const Haze& haze, double distance_m);

struct SkyStop {
    double elevation_deg;
    Rgb colour;
};

struct Light {
    SkyView::Light hour = SkyView::Light::day;
    Rgb tint{1, 1, 1};  // what a thing's own colour is multiplied by
    Haze haze;
    std::array<SkyStop, 6> sky{};
    double sun_azimuth_rad = 0, sun_elevation_rad = 0;  // azimuth from the landing direction to the right
    WorldPoint to_sun;                                  // unit
    double direct = 1;     // share of the sun's own light, 0 under cloud: shadows, and lit faces
    double glare = 0;      // of a low sun in the view
    double cloud = 0;      // 1: a closed cloud; wisps below
    double halo = 1;       // how much of a lamp's glow shows: little against a bright ground
    double lamps_lit = 0;  // 0 nobody needs a lamp ... 1 every window
    bool dark = false;     // nothing is seen but lamps and what the landing light reaches
    double threshold_lux = 1e-4, lights_setting = 1;
};

Light light_of(const SkyView& sky);

// A thing's colour as it arrives at the eye from a distance.
inline Rgb seen_colour(const Light& light, const Rgb& own, double distance_m) {
    const Rgb lit{own.r * light.tint.r, own.g * light.tint.g, own.b * light.tint.b};
    return mix(light.haze.colour, lit, clearness(light.haze, distance_m));
}

}  // namespace slopewise
