#include "review/energy.h"

namespace slopewise {

Quadrant quadrant_of(const Deviations& off) {
    if (off.path_in && off.speed_in) return Quadrant::centre;
    if (off.path_rad >= 0.0) return off.speed_mps >= 0.0 ? Quadrant::high_fast : Quadrant::high_slow;
    return off.speed_mps >= 0.0 ? Quadrant::low_fast : Quadrant::low_slow;
}

Energy energy_of(const Scenario& scenario, TrackPoints points) {
    Energy energy;
    for (std::size_t i = 0; i < points.size(); ++i) {
        const Deviations off = deviations(scenario, points[i]);
        energy.share[static_cast<std::size_t>(quadrant_of(off))] += 1.0 / static_cast<double>(points.size());
        const bool both = !off.path_in && off.path_rad < 0.0 && !off.speed_in && off.speed_mps < 0.0;
        if (both && i > 0) energy.low_and_slow_s += points[i].time_s - points[i - 1].time_s;
    }
    return energy;
}

}  // namespace slopewise
