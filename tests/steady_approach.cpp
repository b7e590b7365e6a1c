#include "tests/steady_approach.h"

#include <cmath>

#include "base/units.h"

namespace slopewise::test {

std::vector<TrackPoint> steady_approach(const Scenario& scenario, double from_ft) {
    std::vector<TrackPoint> points;
    const double speed_mps = scenario.lesson.target_cas_mps;
    const double tangent = std::tan(scenario.surroundings.runway.lights.nominal_path_rad);
    for (double t = 0.0;; t += 0.1) {
        TrackPoint p;
        p.time_s = t;
        p.wheel_height_m = m_from_ft(from_ft) - t * speed_mps * tangent;
        if (p.wheel_height_m < m_from_ft(50.0) - speed_mps * tangent * 0.1) return points;
        p.eye_height_m = p.wheel_height_m + 2.0;
        p.distance_m = p.eye_height_m / tangent;
        p.cas_mps = p.ground_speed_mps = speed_mps;
        p.sink_mps = speed_mps * tangent;
        p.power = p.lever = 0.3;
        p.flap_setting = landing_flap(scenario.aircraft);
        p.flap_position = p.flap_setting;
        p.white_count = 2;
        points.push_back(p);
    }
}

}  // namespace slopewise::test
