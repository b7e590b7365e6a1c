// The flare as handbooks draw it: a circular arc from the glide down to the runway.
#pragma once

namespace slopewise {

// Lengths in metres.
struct Flare {
    double radius_m = 0.0;
    double height_m = 0.0;    // at which it begins
    double air_m = 0.0;       // along the ground from the screen height to its beginning
    double distance_m = 0.0;  // along the ground, of the arc
};

// R = V^2 / (0.2 g) with V = 1.23 Vs and a load of 1.2; h = R (1 - cos a); air distance (screen - h) / tan a;
// arc R sin a (Anderson, Aircraft Performance and Design, section 6.8). Vs in m/s, the path's angle in rad (>
// 0), the screen height in m (50 ft there). A light aircraft flares higher and more gently than this: at 45
// kt Vs the arc begins at 2 ft, a pilot at 10 to 20.
Flare flare_of(double stall_mps, double path_rad, double screen_m);

}  // namespace slopewise
