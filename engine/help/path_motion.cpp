#include "help/path_motion.h"

#include <limits>

#include "base/exact_math.h"

namespace slopewise {

PathMotion path_motion(const TrackPoint& now, double nominal_path_rad) {
    return {now.path_offset_m, now.ground_speed_mps * exact::tan(nominal_path_rad) - now.sink_mps};
}

double time_to_path_s(const PathMotion& motion) {
    const bool closing = motion.offset_m * motion.offset_rate_mps < 0.0;
    return closing ? -motion.offset_m / motion.offset_rate_mps : std::numeric_limits<double>::infinity();
}

bool returns_properly(const PathMotion& motion) {
    const double time_s = time_to_path_s(motion);
    return time_s >= soonest_return_s && time_s <= latest_return_s;
}

double offset_ahead_m(const PathMotion& motion) {
    return motion.offset_m + cue_ahead_s * motion.offset_rate_mps;
}

}  // namespace slopewise
