#include "review/gate_value.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include "base/interpolate.h"
#include "base/units.h"
#include "review/lever_step.h"
#include "review/spread.h"

namespace slopewise {
namespace {

// Means over the window; the flags judge the means, by the tolerance at the gate.
void average_window(const Scenario& scenario, TrackPoints points, GateValue& gate) {
    TrackPoint mean;
    double count = 0.0, sink_error = 0.0;
    for (const TrackPoint& point : points) {
        if (std::abs(point.time_s - gate.time_s) > gate_window_s) continue;
        count += 1.0;
        mean.path_error_rad += point.path_error_rad;
        mean.path_offset_m += point.path_offset_m;
        mean.cas_mps += point.cas_mps;
        mean.sink_mps += point.sink_mps;
        mean.pitch_rad += point.pitch_rad;
        mean.power += point.power;
        mean.stick += point.stick;
        mean.trim += point.trim;
        sink_error += deviations(scenario, point).sink_mps;
    }
    mean.path_error_rad /= count;
    mean.path_offset_m /= count;
    mean.cas_mps /= count;
    gate.cas_mps = mean.cas_mps;
    gate.sink_mps = mean.sink_mps / count;
    gate.pitch_rad = mean.pitch_rad / count;
    gate.power = mean.power / count;
    gate.stick = mean.stick / count;
    gate.trim = mean.trim / count;
    gate.mean = deviations(scenario, mean);
    gate.mean.sink_mps = sink_error / count;
    gate.mean.sink_in = std::abs(gate.mean.sink_mps) <= scenario.lesson.tolerances.sink_mps;
}

// Trends and ranges up to the gate.
void look_back(TrackPoints points, GateValue& gate) {
    std::vector<double> times, path, speed, sink;
    double least_pitch = points[gate.point].pitch_rad, most_pitch = least_pitch;
    std::size_t first = gate.point;
    for (std::size_t i = gate.point + 1; i-- > 0;) {
        const TrackPoint& p = points[i];
        if (p.time_s < gate.time_s - gate_trend_s) break;
        first = i;
        times.push_back(p.time_s);
        path.push_back(p.path_error_rad);
        speed.push_back(p.cas_mps);
        sink.push_back(p.sink_mps);
        least_pitch = std::min(least_pitch, p.pitch_rad);
        most_pitch = std::max(most_pitch, p.pitch_rad);
    }
    gate.path_trend_radps = slope_of(times, path);
    gate.speed_trend_mps2 = slope_of(times, speed);
    gate.sink_trend_mps2 = slope_of(times, sink);
    gate.pitch_range_rad = most_pitch - least_pitch;
    gate.lever_step = largest_lever_step(points.subspan(first, gate.point - first + 1));
}

// What is taken at the gate itself.
void take_then(const TrackPoint& then, GateValue& gate) {
    gate.distance_m = then.distance_m;
    gate.white_count = then.white_count;
    gate.white_fraction = then.white_fraction;
    gate.flap_position = then.flap_position;
    gate.flap_setting = then.flap_setting;
}

}  // namespace

std::size_t first_below(TrackPoints points, double height_m) {
    const auto below = std::ranges::find_if(
        points, [&](const TrackPoint& point) { return point.wheel_height_m <= height_m; });
    return below == points.end() ? 0 : static_cast<std::size_t>(below - points.begin());
}

GateValue gate_value(const Scenario& scenario, TrackPoints points, double height_ft) {
    GateValue gate;
    gate.height_ft = height_ft;
    const double height_m = m_from_ft(height_ft);
    gate.point = first_below(points, height_m);
    gate.reached = gate.point > 0;
    if (!gate.reached) return gate;
    const TrackPoint& above = points[gate.point - 1];
    const TrackPoint& then = points[gate.point];
    const double fraction = (above.wheel_height_m - height_m) / (above.wheel_height_m - then.wheel_height_m);
    gate.time_s = lerp(above.time_s, then.time_s, fraction);
    take_then(then, gate);
    average_window(scenario, points, gate);
    look_back(points, gate);
    return gate;
}

GateValue start_value(const Scenario& scenario, TrackPoints points) {
    GateValue start;
    start.height_ft = ft_from_m(points.front().wheel_height_m);
    start.reached = true;
    start.time_s = points.front().time_s;
    take_then(points.front(), start);
    average_window(scenario, points, start);
    return start;
}

}  // namespace slopewise
