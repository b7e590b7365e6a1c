// What can be seen how far: a lamp by Allard's law, a dark mark against its ground by Koschmieder's.
#pragma once

namespace slopewise {

enum class Background { day, dusk, night };

// Extinction coefficient (1/m) for a meteorological visibility (m, > 0): Koschmieder with 5 %
// contrast, 3.0/V.
double extinction_per_m(double visibility_m);

// Illuminance (lux) at the eye from a lamp of so many candela at a distance (m, > 0): Allard's law,
// E = I exp(-sigma d) / d^2.
double illuminance_lux(double intensity_cd, double distance_m, double extinction_per_m);

// Least illuminance (lux) at which a lamp is noticed: 1e-4 by day, 1e-5 at dusk, 8e-7 at night (the visual
// thresholds of ICAO Annex 3 for runway visual range, from memory).
double threshold_lux(Background background);

// How far (m) a lamp can be seen; the distance at which its illuminance falls to the threshold.
double visual_range_m(double intensity_cd, double extinction_per_m, Background background);

// Contrast left of a mark against its ground at a distance (m), 1 near ... 0 far.
double contrast_left(double distance_m, double extinction_per_m);

// Intensity (cd) of a slope-light unit. By day at full setting, 15,000 cd in red (ICAO Annex 14 figure, from
// memory); reduced at dusk and at night (common practice, no source), when 15,000 would dazzle.
double unit_intensity_cd(Background background);

}  // namespace slopewise
