#include "drill/path_power.h"

#include <cmath>

#include "base/units.h"

namespace slopewise {
namespace {

constexpr double beyond_rad = rad_from_deg(0.1);

}  // namespace

int path_crossings(TrackPoints points) {
    int crossings = 0, side = 0;
    for (const TrackPoint& p : points) {
        if (std::abs(p.path_error_rad) < beyond_rad) continue;
        const int now = p.path_error_rad > 0.0 ? 1 : -1;
        crossings += side != 0 && now != side;
        side = now;
    }
    return crossings;
}

std::vector<Figure> path_power_figures(const Scenario& scenario, const Track& track) {
    const TrackPoints points = scored_points(track);
    double path = 0.0, speed = 0.0;
    for (const TrackPoint& p : points) {
        const Deviations off = deviations(scenario, p);
        path += off.path_in;
        speed += off.speed_in;
    }
    const auto count = static_cast<double>(points.size());
    const double minutes = (points.back().time_s - points.front().time_s) / 60.0;
    std::vector<Figure> figures{{Measure::path_percent, 100.0 * path / count},
                                {Measure::speed_percent, 100.0 * speed / count}};
    if (minutes > 0.0) figures.push_back({Measure::crossings_per_min, path_crossings(points) / minutes});
    return figures;
}

}  // namespace slopewise
