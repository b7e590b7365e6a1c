#include <algorithm>

#include "base/units.h"
#include "review/diagnosis/detectors.h"

namespace slopewise::detect {

// Landing flap not set at 400 ft, though the approach began higher than that.
Evidence late_flap(const Approach& approach) {
    const Configuration& flap = approach.review.configuration;
    if (flap.landing_at_start || flap.landing_setting == 0) return {};
    const std::size_t passed = first_below(approach.points, m_from_ft(late_flap_ft));
    if (passed == 0) return {};
    const TrackPoint& then = approach.points[passed];
    if (then.flap_setting == flap.landing_setting) return {};
    return {1.0, {passed}};
}

// More than 40 ft gained on the path within six seconds of a step of flap.
Evidence balloon(const Approach& approach) {
    Evidence evidence;
    for (const FlapStep& step : approach.review.configuration.steps) {
        if (step.to < step.from) continue;
        const double strength = ft_from_m(step.balloon_m) / balloon_ft;
        if (strength >= 1.0) evidence.moments.push_back(step.point);
        evidence.strength = std::max(evidence.strength, strength);
    }
    return evidence;
}

// Above the flap's limiting speed.
Evidence flap_too_fast(const Approach& approach) {
    Evidence evidence;
    for (const FlapStep& step : approach.review.configuration.steps)
        if (step.too_fast && step.to > step.from) evidence.moments.push_back(step.point);
    const double over_s = approach.review.configuration.over_flap_speed_s;
    evidence.strength = evidence.moments.empty() ? over_s / 2.0 : 1.0;
    return evidence;
}

// Flap raised below the path, the approach going on.
Evidence flap_raised_low(const Approach& approach) {
    Evidence evidence;
    for (const FlapStep& step : approach.review.configuration.steps)
        if (step.to < step.from && approach.points[step.point].path_error_rad < 0.0 &&
            approach.points[step.point].lever < full_power_lever)
            evidence.moments.push_back(step.point);
    evidence.strength = static_cast<double>(evidence.moments.size());
    return evidence;
}

}  // namespace slopewise::detect
