#include "review/summary.h"

#include <algorithm>
#include <cmath>

#include "lesson/gates.h"

namespace slopewise {
namespace {

// How many times its tolerance each deviation is.
struct Severity {
    double path = 0.0, speed = 0.0, sink = 0.0;
};

Severity severity(const Scenario& scenario, const TrackPoint& point, const Deviations& off) {
    const Tolerances& tolerances = scenario.lesson.tolerances;
    const double allowed_m =
        std::max(tolerances.path_floor_m, std::abs(point.distance_m) * tolerances.path_rad);
    const double allowed_mps = off.speed_mps < 0.0 ? tolerances.slow_mps : tolerances.fast_mps;
    return {std::abs(off.path_m) / allowed_m, std::abs(off.speed_mps) / allowed_mps,
            std::abs(off.sink_mps) / tolerances.sink_mps};
}

std::size_t back_on_path(const Scenario& scenario, TrackPoints points) {
    const auto back = std::ranges::find_if(
        points, [&](const TrackPoint& point) { return deviations(scenario, point).path_in; });
    return back == points.end() ? 0 : static_cast<std::size_t>(back - points.begin());
}

// A start off the path is the lesson's, and so is the sink with which one comes back: neither is the
// student's worst.
WorstMoment worst_of(const Scenario& scenario, TrackPoints points) {
    WorstMoment worst;
    worst.back_on_path = back_on_path(scenario, points);
    const double left_m =
        std::abs(deviations(scenario, points.front()).path_m) + scenario.lesson.tolerances.path_floor_m;
    for (std::size_t i = 0; i < points.size(); ++i) {
        const Deviations off = deviations(scenario, points[i]);
        const Severity bad = severity(scenario, points[i], off);
        const bool whole = i >= worst.back_on_path;
        const double path = whole || std::abs(off.path_m) > left_m ? bad.path : 0.0;
        const double how_bad = std::max({path, bad.speed, whole ? bad.sink : 0.0});
        if (how_bad <= worst.severity) continue;
        worst.point = i;
        worst.severity = how_bad;
        worst.deviations = off;
    }
    return worst;
}

template <class Value>
std::vector<double> collect(TrackPoints points, Value value) {
    std::vector<double> values;
    values.reserve(points.size());
    for (const TrackPoint& point : points) values.push_back(value(point));
    return values;
}

void count_lights(TrackPoints points, Summary& summary) {
    const double each = 1.0 / static_cast<double>(points.size());
    for (std::size_t i = 0; i < points.size(); ++i) {
        const int white = points[i].white_count;
        (white < 0 ? summary.light_unseen_share : summary.light_share[static_cast<std::size_t>(white)]) +=
            each;
        if (i > 0 && white != points[i - 1].white_count) ++summary.light_changes;
    }
}

void judge_points(const Scenario& scenario, TrackPoints points, Summary& summary) {
    const double each = 1.0 / static_cast<double>(points.size());
    for (std::size_t i = 0; i < points.size(); ++i) {
        const Deviations off = deviations(scenario, points[i]);
        summary.path_share += off.path_in ? each : 0.0;
        summary.speed_share += off.speed_in ? each : 0.0;
        summary.sink_share += off.sink_in ? each : 0.0;
        summary.all_share += off.all_in() ? each : 0.0;
    }
}

}  // namespace

Summary summarise(const Scenario& scenario, const Track& track, End end) {
    const TrackPoints points = scored_points(track);
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
    summary.worst = worst_of(scenario, points);
    return summary;
}

}  // namespace slopewise
