#include "review/summary.h"

#include <algorithm>
#include <cmath>

#include "base/exact_math.h"
#include "base/interpolate.h"
#include "lesson/gates.h"

namespace slopewise {
namespace {

using Points = std::span<const TrackPoint>;

struct Crossing {
    std::size_t after = 0;  // index of the first point at or below the height; 0: none
    double time_s = 0.0;
};

Crossing first_crossing(Points points, double height_m) {
    for (std::size_t i = 1; i < points.size(); ++i) {
        const TrackPoint& above = points[i - 1];
        const TrackPoint& below = points[i];
        if (!(above.wheel_height_m > height_m && below.wheel_height_m <= height_m)) continue;
        const double fraction =
            (above.wheel_height_m - height_m) / (above.wheel_height_m - below.wheel_height_m);
        return {i, lerp(above.time_s, below.time_s, fraction)};
    }
    return {};
}

// Means of the deviations over the window; the flags judge the means, by the tolerance at the gate.
void average_window(const Scenario& scenario, Points points, GateValue& gate) {
    TrackPoint mean;
    double count = 0.0, sink_error = 0.0;
    for (const TrackPoint& point : points) {
        if (std::abs(point.time_s - gate.time_s) > gate_window_s) continue;
        count += 1.0;
        mean.path_error_rad += point.path_error_rad;
        mean.path_offset_m += point.path_offset_m;
        mean.cas_mps += point.cas_mps;
        mean.power += point.power;
        sink_error += deviations(scenario, point).sink_mps;
    }
    mean.path_error_rad /= count;
    mean.path_offset_m /= count;
    mean.cas_mps /= count;
    gate.power = mean.power / count;
    gate.mean = deviations(scenario, mean);
    gate.mean.sink_mps = sink_error / count;
    gate.mean.sink_in = std::abs(gate.mean.sink_mps) <= scenario.lesson.tolerances.sink_mps;
}

GateValue gate_value(const Scenario& scenario, Points points, double height_ft) {
    GateValue gate;
    gate.height_ft = height_ft;
    const Crossing crossing = first_crossing(points, m_from_ft(height_ft));
    gate.reached = crossing.after > 0;
    if (!gate.reached) return gate;
    gate.time_s = crossing.time_s;
    const TrackPoint& then = points[crossing.after];
    gate.distance_m = then.distance_m;
    gate.white_count = then.white_count;
    gate.white_fraction = then.white_fraction;
    gate.flap_position = then.flap_position;
    gate.flap_setting = then.flap_setting;
    average_window(scenario, points, gate);
    return gate;
}

// How many times its tolerance the largest deviation is.
double severity(const Scenario& scenario, const TrackPoint& point, const Deviations& off) {
    const Tolerances& tolerances = scenario.lesson.tolerances;
    const double allowed_m =
        std::max(tolerances.path_floor_m, std::abs(point.distance_m) * tolerances.path_rad);
    const double allowed_mps = off.speed_mps < 0.0 ? tolerances.slow_mps : tolerances.fast_mps;
    return std::max({std::abs(off.path_m) / allowed_m, std::abs(off.speed_mps) / allowed_mps,
                     std::abs(off.sink_mps) / tolerances.sink_mps});
}

template <class Value>
std::vector<double> collect(Points points, Value value) {
    std::vector<double> values;
    values.reserve(points.size());
    for (const TrackPoint& point : points) values.push_back(value(point));
    return values;
}

void count_lights(Points points, Summary& summary) {
    const double each = 1.0 / static_cast<double>(points.size());
    for (std::size_t i = 0; i < points.size(); ++i) {
        const int white = points[i].white_count;
        (white < 0 ? summary.light_unseen_share : summary.light_share[static_cast<std::size_t>(white)]) +=
            each;
        if (i > 0 && white != points[i - 1].white_count) ++summary.light_changes;
    }
}

void judge_points(const Scenario& scenario, Points points, Summary& summary) {
    const double each = 1.0 / static_cast<double>(points.size());
    for (std::size_t i = 0; i < points.size(); ++i) {
        const Deviations off = deviations(scenario, points[i]);
        summary.path_share += off.path_in ? each : 0.0;
        summary.speed_share += off.speed_in ? each : 0.0;
        summary.sink_share += off.sink_in ? each : 0.0;
        summary.all_share += off.all_in() ? each : 0.0;
        const double how_bad = severity(scenario, points[i], off);
        if (how_bad > summary.worst.severity) summary.worst = {i, how_bad, off};
    }
}

}  // namespace

Deviations deviations(const Scenario& scenario, const TrackPoint& point) {
    const Lesson& lesson = scenario.lesson;
    const double path_tangent = exact::tan(scenario.surroundings.runway.lights.nominal_path_rad);
    Deviations off;
    off.path_rad = point.path_error_rad;
    off.path_m = point.path_offset_m;
    off.speed_mps = point.cas_mps - lesson.target_cas_mps;
    off.sink_mps = point.sink_mps - point.ground_speed_mps * path_tangent;
    off.path_in = std::abs(off.path_rad) <= lesson.tolerances.path_rad ||
                  std::abs(off.path_m) <= lesson.tolerances.path_floor_m;
    off.speed_in =
        off.speed_mps >= -lesson.tolerances.slow_mps && off.speed_mps <= lesson.tolerances.fast_mps;
    off.sink_in = std::abs(off.sink_mps) <= lesson.tolerances.sink_mps;
    return off;
}

Spread spread_of(std::span<const double> values) {
    Spread spread;
    if (values.empty()) return spread;
    const double count = static_cast<double>(values.size());
    for (const double value : values) spread.bias += value;
    spread.bias /= count;
    double variance = 0.0, mean_square = 0.0;
    for (const double value : values) {
        variance += square(value - spread.bias);
        mean_square += square(value);
    }
    spread.scatter = std::sqrt(variance / count);
    spread.rms = std::sqrt(mean_square / count);
    return spread;
}

Summary summarise(const Scenario& scenario, const Track& track, End end) {
    const Points points(track.points.data(), track.scored);
    Summary summary;
    summary.end = end;
    summary.last = points.back();
    summary.scored_s = points.back().time_s - points.front().time_s;
    for (const double height_ft : gate_heights_ft) {
        if (points.front().wheel_height_m <= m_from_ft(height_ft)) continue;
        summary.gates.push_back(gate_value(scenario, points, height_ft));
    }
    summary.path_rad = spread_of(collect(points, [](const TrackPoint& p) { return p.path_error_rad; }));
    summary.path_m = spread_of(collect(points, [](const TrackPoint& p) { return p.path_offset_m; }));
    summary.speed_mps = spread_of(
        collect(points, [&](const TrackPoint& p) { return p.cas_mps - scenario.lesson.target_cas_mps; }));
    summary.light_kind = scenario.surroundings.runway.lights.kind;
    summary.light_units = scenario.lights.pattern;
    count_lights(points, summary);
    judge_points(scenario, points, summary);
    return summary;
}

}  // namespace slopewise
