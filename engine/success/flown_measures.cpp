#include "success/flown_measures.h"

#include <algorithm>
#include <cmath>

namespace slopewise {
namespace {

// The longest time in speed tolerance from point `begin` to before `end`.
double longest_in_speed_s(const Scenario& scenario, TrackPoints points, std::size_t begin, std::size_t end) {
    double longest_s = 0.0;
    for (std::size_t i = begin; i < end;) {
        if (!deviations(scenario, points[i]).speed_in) {
            ++i;
            continue;
        }
        std::size_t last = i;
        while (last + 1 < end && deviations(scenario, points[last + 1]).speed_in) ++last;
        longest_s = std::max(longest_s, points[last].time_s - points[i].time_s);
        i = last + 1;
    }
    return longest_s;
}

}  // namespace

Extremes speed_extremes_mps(const Scenario& scenario, TrackPoints points) {
    Extremes speed{no_limit, -no_limit};
    for (const TrackPoint& point : points) {
        const double off_mps = point.cas_mps - scenario.lesson.target_cas_mps;
        speed.least = std::min(speed.least, off_mps);
        speed.most = std::max(speed.most, off_mps);
    }
    return speed;
}

double speed_held_s(const Scenario& scenario, TrackPoints points, const std::vector<FlapStep>& steps) {
    double held_s = no_limit;
    std::size_t begin = 0;
    for (std::size_t i = 0; i <= steps.size(); ++i) {
        const std::size_t end = i < steps.size() ? steps[i].point : points.size();
        held_s = std::min(held_s, longest_in_speed_s(scenario, points, begin, end));
        begin = end;
    }
    return held_s;
}

double path_crossings_per_min(const Criteria& criteria, TrackPoints points) {
    int side = 0, crossings = 0;
    for (const TrackPoint& point : points) {
        const bool beyond = std::abs(point.path_error_rad) > 0.5 * criteria.answer_rad &&
                            std::abs(point.path_offset_m) > 0.5 * criteria.answer_floor_m;
        if (!beyond) continue;
        const int now = point.path_error_rad > 0.0 ? 1 : -1;
        crossings += side != 0 && now != side;
        side = now;
    }
    const double time_s = points.back().time_s - points.front().time_s;
    return time_s > 0.0 ? 60.0 * crossings / time_s : 0.0;
}

std::optional<double> lowest_angle_rad(const Scenario& scenario, TrackPoints points, double above_m) {
    std::optional<double> lowest_rad;
    for (const TrackPoint& point : points) {
        if (point.wheel_height_m <= above_m) continue;
        const double angle_rad = scenario.surroundings.runway.lights.nominal_path_rad + point.path_error_rad;
        lowest_rad = std::min(lowest_rad.value_or(angle_rad), angle_rad);
    }
    return lowest_rad;
}

std::optional<double> lost_before_path_m(TrackPoints points) {
    constexpr double met_rad = -rad_from_minutes(10.0);
    double lowest_m = points.front().eye_height_m;
    for (const TrackPoint& point : points) {
        lowest_m = std::min(lowest_m, point.eye_height_m);
        if (point.path_error_rad >= met_rad) return points.front().eye_height_m - lowest_m;
    }
    return std::nullopt;
}

double largest_lever_below(TrackPoints points, double below_m) {
    double largest = 0.0;
    for (const TrackPoint& point : points)
        if (point.wheel_height_m < below_m) largest = std::max(largest, point.lever);
    return largest;
}

double least_above_leader_m(const Scenario& scenario, TrackPoints points) {
    const Runway& runway = scenario.surroundings.runway;
    const Traffic& leader = scenario.lesson.traffic;
    double least_m = no_limit;
    for (const TrackPoint& point : points) {
        const double x_m = runway.aim_distance_m - point.distance_m;
        if (x_m >= leader.touchdown_m) break;
        least_m = std::min(least_m, point.wheel_height_m - leader_path_height_m(leader, runway, x_m));
    }
    return least_m;
}

}  // namespace slopewise
