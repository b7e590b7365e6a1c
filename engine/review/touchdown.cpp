#include "review/touchdown.h"

namespace slopewise {

Touchdown touchdown_of(const Scenario& scenario, TrackPoints points, End end) {
    Touchdown touchdown;
    const TrackPoint& last = points.back();
    if (end != End::reached_floor || last.sink_mps <= 0.0) return touchdown;
    const Runway& runway = scenario.surroundings.runway;
    const double slope = last.sink_mps / last.ground_speed_mps;  // of the flight, down
    const double x_m = runway.aim_distance_m - last.distance_m;
    // Height over the runway, wheel_height - slope (t - x), is its own slope times t; before the threshold
    // the ground is level, but 50 ft only counts near it.
    double at_m = (last.wheel_height_m + slope * x_m) / (slope + runway.slope);
    if (at_m < 0.0) at_m = last.wheel_height_m / slope + x_m;
    touchdown.known = true;
    touchdown.from_threshold_m = at_m;
    touchdown.from_aim_m = at_m - runway.aim_distance_m;
    touchdown.float_least_m = at_m + usual_float_least_m;
    touchdown.float_most_m = at_m + usual_float_most_m;
    touchdown.sink_mps = last.sink_mps;
    touchdown.speed_mps = last.cas_mps - scenario.lesson.target_cas_mps;
    return touchdown;
}

}  // namespace slopewise
