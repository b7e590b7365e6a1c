// The visual-approach slope lights: where each unit stands, the angle it is set to, and what the eye
// sees of it. The four-unit PAPI; further kinds add a way to build the bar, the rest is shared.
#pragma once

#include <array>

#include "base/units.h"
#include "world/runway.h"

namespace slopewise {

struct LightUnit {
    Point3 lens;
    double setting_rad = 0.0;  // eye above this: white; below: red
};

// Units in order from the one nearest the runway outwards.
struct LightBar {
    std::array<LightUnit, 4> units{};
    int count = 0;
};

// Width of the blend between red and white: not more than 3 minutes of arc (ICAO Annex 14 Vol I, 5.3.5,
// read in a secondary source). The whole of it is used: the change is as soft as the standard allows.
inline constexpr double light_transition_rad = rad_from_deg(3.0 / 60.0);

// A four-unit PAPI: settings +30', +10', -10', -30' about the nominal path from the unit nearest the
// runway outwards (FAA AC 150/5345-28 table as given by a maker's manual), abeam the aim point, lenses
// at its elevation.
LightBar papi(const Runway& runway);

// Elevation of the eye above the horizontal at a unit's lens (rad), by the slant distance along the
// ground to that unit.
double unit_eye_angle_rad(const LightUnit& unit, const Point3& eye);

// What the eye sees of the unit: 0 red, 1 white, a blend only inside the transition about the setting.
double unit_white_fraction(const LightUnit& unit, const Point3& eye);

// Whether the unit can be seen at all: its lens faces the approach.
bool unit_faces(const LightUnit& unit, const Point3& eye);

// Number of units seen white (more white than red); -1 where none faces the eye.
int white_count(const LightBar& bar, const Point3& eye);

}  // namespace slopewise
