#include "review/bands.h"

#include "base/units.h"

namespace slopewise {
namespace {

Band band_with(const Scenario& scenario, TrackPoints points, const std::vector<bool>& counts) {
    std::vector<double> path_rad, path_m, speed_mps;
    for (std::size_t i = 0; i < points.size(); ++i) {
        if (!counts[i]) continue;
        path_rad.push_back(points[i].path_error_rad);
        path_m.push_back(points[i].path_offset_m);
        speed_mps.push_back(points[i].cas_mps - scenario.lesson.target_cas_mps);
    }
    return {path_rad.size(), spread_of(path_rad), spread_of(path_m), spread_of(speed_mps),
            control_activity(points, counts)};
}

}  // namespace

std::size_t band_of(const TrackPoint& point) {
    const double height_ft = ft_from_m(point.wheel_height_m);
    constexpr double rounding_nm = 1e-6;  // a flight that begins at 2 NM is not beyond it by a rounding
    if (height_ft > 500.0) return nm_from_m(point.distance_m) > 2.0 + rounding_nm ? 0 : 1;
    if (height_ft > 300.0) return 2;
    return height_ft > 200.0 ? 3 : 4;
}

Bands bands_of(const Scenario& scenario, TrackPoints points) {
    Bands bands;
    std::vector<bool> counts(points.size());
    for (std::size_t band = 0; band < bands.size(); ++band) {
        for (std::size_t i = 0; i < points.size(); ++i) counts[i] = band_of(points[i]) == band;
        bands[band] = band_with(scenario, points, counts);
    }
    return bands;
}

}  // namespace slopewise
