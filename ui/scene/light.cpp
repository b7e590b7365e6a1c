#include "ui/scene/light.h"

#include <algorithm>
#include <cmath>

#include "base/interpolate.h"
#include "base/units.h"
#include "world/visibility.h"

namespace slopewise {

namespace {

// A thick haze: sky and ground run together in it.
constexpr Rgb milky = rgb_from_bytes(206, 211, 212);

double thickness(double visibility_m) { return 1.0 - smooth_step(visibility_m, 2500.0, 14000.0); }

struct Hour {
    Rgb tint, distant_ground;  // far ground is a shade darker than the sky above it: the horizon stays a line
    Rgb haze;                  // of thick air
    double sun_azimuth_deg, sun_elevation_deg, direct;
    std::array<SkyStop, 6> sky;
};

constexpr Hour day{{1, 1, 1},
                   rgb_from_bytes(168, 180, 183),
                   milky,
                   -132,
                   42,
                   1,
                   {{{-0.1, rgb_from_bytes(217, 222, 220)},
                     {0.7, rgb_from_bytes(209, 219, 223)},
                     {2.4, rgb_from_bytes(189, 207, 220)},
                     {6.0, rgb_from_bytes(163, 190, 212)},
                     {14.0, rgb_from_bytes(128, 164, 196)},
                     {35.0, rgb_from_bytes(94, 134, 176)}}}};

constexpr Hour low_sun{{1.03, 0.89, 0.70},
                       rgb_from_bytes(205, 184, 150),
                       rgb_from_bytes(226, 208, 176),
                       -7.5,
                       3.3,
                       1,
                       {{{-0.1, rgb_from_bytes(244, 223, 186)},
                         {0.9, rgb_from_bytes(243, 222, 186)},
                         {2.6, rgb_from_bytes(233, 216, 188)},
                         {6.5, rgb_from_bytes(208, 206, 196)},
                         {14.0, rgb_from_bytes(160, 180, 200)},
                         {35.0, rgb_from_bytes(104, 140, 180)}}}};

constexpr Hour dusk{{0.34, 0.325, 0.355},
                    rgb_from_bytes(92, 88, 100),
                    rgb_from_bytes(104, 100, 110),
                    -14,
                    -4,
                    0,
                    {{{-0.1, rgb_from_bytes(214, 158, 116)},
                      {0.8, rgb_from_bytes(206, 152, 118)},
                      {2.6, rgb_from_bytes(168, 138, 130)},
                      {6.5, rgb_from_bytes(112, 110, 132)},
                      {14.0, rgb_from_bytes(62, 73, 108)},
                      {35.0, rgb_from_bytes(30, 40, 74)}}}};

// By night the tint is the landing light's: only what it reaches is seen.
constexpr Hour night{{0.60, 0.57, 0.50},
                     rgb_from_bytes(7, 8, 11),
                     rgb_from_bytes(12, 12, 14),
                     0,
                     -40,
                     0,
                     {{{-0.1, rgb_from_bytes(26, 26, 32)},
                       {0.8, rgb_from_bytes(21, 22, 29)},
                       {2.6, rgb_from_bytes(15, 17, 25)},
                       {6.5, rgb_from_bytes(10, 13, 21)},
                       {14.0, rgb_from_bytes(8, 10, 18)},
                       {35.0, rgb_from_bytes(6, 8, 15)}}}};

// Nothing lit below and nothing seen above: no horizon.
constexpr Rgb blackness = rgb_from_bytes(2, 2, 4);

const Hour& hour_of(SkyView::Light light) {
    switch (light) {
    case SkyView::Light::day: return day;
    case SkyView::Light::low_sun: return low_sun;
    case SkyView::Light::dusk: return dusk;
    case SkyView::Light::night: return night;
    }
    return day;
}

double brightness(const Rgb& c) { return 0.3 * c.r + 0.6 * c.g + 0.1 * c.b; }

// An even cloud takes the colour out of the sky and a little of the light.
void overcast(Light& light, bool rain) {
    light.direct = 0;
    light.cloud = 1;
    light.glare = 0;
    light.tint = mix(
        light.tint,
        {0.80 * brightness(light.tint), 0.83 * brightness(light.tint), 0.86 * brightness(light.tint)}, 0.9);
    if (rain) light.tint = scaled(light.tint, 0.90);
    for (SkyStop& stop : light.sky) {
        const double grey =
            brightness(light.sky[1].colour) * (stop.elevation_deg > 5.0 ? 0.80 : 0.92) * (rain ? 0.86 : 1.0);
        stop.colour = mix(stop.colour, {grey * 0.985, grey * 1.0, grey * 1.01}, 0.94);
    }
    const double far = brightness(light.haze.colour) * (rain ? 0.90 : 0.97);
    light.haze.colour = mix(light.haze.colour, {far * 0.97, far, far * 1.02}, 0.9);
}

}  // namespace

double clearness(const Haze& haze, double distance_m) {
    return std::exp(-haze.extinction_per_m * distance_m);
}

Light light_of(const SkyView& sky) {
    const Hour& hour = hour_of(sky.light);
    Light light;
    light.hour = sky.light;
    light.dark = sky.light == SkyView::Light::night;
    const double thick = thickness(sky.visibility_m);
    light.tint = hour.tint;
    light.haze = {mix(hour.distant_ground, hour.haze, thick),
                  extinction_per_m(std::max(500.0, sky.visibility_m))};
    light.sky = hour.sky;
    for (SkyStop& stop : light.sky)
        stop.colour =
            mix(stop.colour, hour.haze, thick * (1.0 - 0.4 * smooth_step(stop.elevation_deg, 1.0, 20.0)));
    light.sun_azimuth_rad = rad_from_deg(hour.sun_azimuth_deg);
    light.sun_elevation_rad = rad_from_deg(hour.sun_elevation_deg);
    light.to_sun = {std::cos(light.sun_elevation_rad) * std::cos(light.sun_azimuth_rad),
                    std::cos(light.sun_elevation_rad) * std::sin(light.sun_azimuth_rad),
                    std::sin(light.sun_elevation_rad)};
    light.direct = hour.direct * (1.0 - 0.6 * thick);
    light.glare = sky.light == SkyView::Light::low_sun ? 1.0 : 0.0;
    if (sky.overcast) overcast(light, sky.rain);
    if (light.dark && !sky.ground_lights) {
        light.haze.colour = blackness;
        for (SkyStop& stop : light.sky) stop.colour = blackness;
        light.cloud = 1;  // no stars
    }
    const bool lamps = sky.light == SkyView::Light::dusk || light.dark;
    light.lamps_lit = lamps && sky.ground_lights ? 1.0 : 0.0;
    light.halo = light.dark ? 1.0 : (sky.light == SkyView::Light::dusk ? 0.85 : 0.5);
    light.threshold_lux = sky.threshold_lux;
    light.lights_setting = sky.lights_setting;
    return light;
}

}  // namespace slopewise
