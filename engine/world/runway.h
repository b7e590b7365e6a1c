// The runway: its frame, its size and slope, where its aim point is and which lights serve it.
// Frame: x along the landing direction from the threshold (m, negative on final), y to the right,
// z up from the threshold elevation. The approach terrain is level; the runway may slope.
#pragma once

#include <string>

#include "world/countryside.h"

namespace slopewise {

struct Point3 {
    double x_m = 0.0, y_m = 0.0, z_m = 0.0;
};

// Which lights stand where.
struct LightSite {
    enum class Kind { papi, papi_harmonised, apapi, vasi };
    enum class Side { left, right, both };

    Kind kind = Kind::papi;
    double nominal_path_rad = 0.0;  // 2.5 to 4.5 degrees
    Side side = Side::left;         // left unless impracticable: CS ADR-DSN.M.645(b)(1)
    double edge_gap_m = 15.0;       // runway edge to the inner unit: UFC 3-535-01, 12-3
    double spacing_m = 9.0;         // between units: UFC 3-535-01, 12-3
};

struct Runway {
    std::string id;
    std::string name;        // "Larkmoor 27"
    std::string designator;  // "27"
    double length_m = 0.0;
    double width_m = 0.0;
    double elevation_m = 0.0;     // of the threshold, above mean sea level
    double slope = 0.0;           // tangent, positive up in the landing direction
    double aim_distance_m = 0.0;  // threshold to the beginning of the aiming-point marking
    LightSite lights;
    bool edge_lights = false;      // edge, threshold and end: runway_lights.h
    bool approach_lights = false;  // a simple row and crossbar before the threshold
    Countryside countryside;
};

// Height of the ground (m, above the threshold) at x: level before the threshold, the slope along the
// runway, level again beyond its far end.
double ground_height_m(const Runway& runway, double x_m);

// The aim point: the beginning of the aiming-point marking on the centreline, where the slope lights
// also originate (CS ADR-DSN.L.540 Table L-1 note a).
Point3 aim_point(const Runway& runway);

// Aiming-point marking by landing distance available: CS ADR-DSN.L.540 Table L-1.
struct AimingPointMarking {
    double distance_m;  // threshold to its beginning
    double length_m;
    double width_m;
    double inner_gap_m;  // between the inner sides of the two stripes
};
AimingPointMarking aiming_point_marking(double landing_distance_m);

}  // namespace slopewise
