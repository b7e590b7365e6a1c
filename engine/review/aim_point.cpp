#include "review/aim_point.h"

#include <cmath>
#include <vector>

#include "base/units.h"
#include "review/gate_value.h"
#include "review/spread.h"

namespace slopewise {
namespace {

constexpr double least_sink_mps = 0.5;  // less, and the path meets the ground nowhere near

// The impact by the means over the window about a point; false where it hardly sinks.
bool mean_impact_m(TrackPoints points, double time_s, double& impact_m) {
    double height = 0.0, distance = 0.0, speed = 0.0, sink = 0.0, count = 0.0;
    for (const TrackPoint& p : points) {
        if (std::abs(p.time_s - time_s) > gate_window_s) continue;
        height += p.eye_height_m;
        distance += p.distance_m;
        speed += p.ground_speed_mps;
        sink += p.sink_mps;
        count += 1.0;
    }
    if (count == 0.0 || sink / count < least_sink_mps) return false;
    impact_m = impact_beyond_aim_m(height / count, distance / count, speed / count, sink / count);
    return true;
}

// The impacts one second apart between the heights.
double wander_m(TrackPoints points) {
    std::vector<double> impacts;
    double next_s = 0.0;
    for (std::size_t i = 0; i < points.size(); ++i) {
        const double height_ft = ft_from_m(points[i].wheel_height_m);
        if (height_ft > 500.0 || points[i].time_s < next_s) continue;
        next_s = points[i].time_s + 1.0 - 1e-6;
        const std::size_t first = i > 20 ? i - 20 : 0, last = std::min(points.size(), i + 21);
        double impact_m = 0.0;
        if (mean_impact_m(points.subspan(first, last - first), points[i].time_s, impact_m))
            impacts.push_back(impact_m);
    }
    return spread_of(impacts).scatter;
}

}  // namespace

double impact_beyond_aim_m(double eye_height_m, double distance_m, double ground_speed_mps, double sink_mps) {
    return eye_height_m * ground_speed_mps / sink_mps - distance_m;
}

AimDrift aim_drift(const Scenario& scenario, TrackPoints points) {
    AimDrift drift;
    for (std::size_t i = 0; i < aim_heights_ft.size(); ++i) {
        const GateValue gate = gate_value(scenario, points, aim_heights_ft[i]);
        drift.known[i] = gate.reached && mean_impact_m(points, gate.time_s, drift.long_m[i]);
    }
    drift.wander_m = wander_m(points);
    const GateValue at_200 = gate_value(scenario, points, 200.0), at_50 = gate_value(scenario, points, 50.0);
    drift.ducking_known = at_200.reached && at_50.reached;
    if (drift.ducking_known) drift.ducking_rad = at_50.mean.path_rad - at_200.mean.path_rad;
    return drift;
}

}  // namespace slopewise
