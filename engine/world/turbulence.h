// Continuous turbulence: the Dryden spectra of MIL-F-8785C at low altitude, discretised exactly, so that
// its variance depends neither on the step nor on the speed. Seeded; the seed is part of the lesson.
#pragma once

#include "base/random.h"

namespace slopewise {

// Scale lengths and intensities at a height.
struct DrydenScales {
    double along_length_m = 0.0, vertical_length_m = 0.0;
    double along_sigma_mps = 0.0, vertical_sigma_mps = 0.0;
};

// MIL-F-8785C low-altitude model, h limited to 10 to 1,000 ft: Lw = h, Lu = h / (0.177 + 0.000823 h)^1.2,
// sigma_w = 0.1 W20, sigma_u = sigma_w / (0.177 + 0.000823 h)^0.4, h in feet. W20 (m/s) is the wind 20 ft
// above the ground that makes the turbulence: 15 kt light, 30 moderate, 45 severe.
DrydenScales dryden_scales(double height_m, double w20_mps);

// Unit-variance filter states; scaled by the intensities when read.
struct Turbulence {
    Random random;
    double along = 0.0;                                  // first order
    double vertical_first = 0.0, vertical_second = 0.0;  // second order
};

// A state drawn from the stationary distribution, so that the first second is like any other.
Turbulence begin_turbulence(std::uint64_t seed);

// After flying dt_s at a true airspeed (m/s) through turbulence of these scales.
void advance_turbulence(Turbulence& turbulence, const DrydenScales& scales, double tas_mps, double dt_s);

struct Gust {
    double along_mps = 0.0;  // positive: more headwind
    double up_mps = 0.0;     // positive: rising air
};

Gust gust_of(const Turbulence& turbulence, const DrydenScales& scales);

}  // namespace slopewise
