// Where the flight path pointed: the spot that stood still in the windscreen, against the aim point.
#pragma once

#include <array>

#include "review/deviations.h"

namespace slopewise {

inline constexpr std::array<double, 4> aim_heights_ft{500.0, 300.0, 200.0, 100.0};

struct AimDrift {
    // At each height: how far beyond the aim point the eye's straight flight path met the ground, by the
    // means over two seconds either side (m, negative short).
    std::array<double, aim_heights_ft.size()> long_m{};
    std::array<bool, aim_heights_ft.size()> known{};

    double wander_m = 0.0;       // scatter of the same from 500 to 50 ft, a second apart
    double ducking_rad = 0.0;    // path deviation at 50 ft less that at 200 ft: negative ducks under
    bool ducking_known = false;  // both gates were reached
};

// How far beyond the aim point a straight flight path from here meets its level (m); `sink_mps` must be
// positive.
double impact_beyond_aim_m(double eye_height_m, double distance_m, double ground_speed_mps, double sink_mps);

AimDrift aim_drift(const Scenario& scenario, TrackPoints points);

}  // namespace slopewise
