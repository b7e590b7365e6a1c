#include "review/deviations.h"

#include <cmath>

#include "base/exact_math.h"

namespace slopewise {

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

}  // namespace slopewise
