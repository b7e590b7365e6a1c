#include <algorithm>

#include "base/units.h"
#include "flight/dynamics.h"
#include "review/diagnosis/detectors.h"

namespace slopewise::detect {
namespace {

constexpr std::size_t two_seconds = 20;  // points

}  // namespace

// Low, the nose raised above the briefed attitude, the speed going, and no power added.
Evidence stretching(const Approach& approach) {
    return time_while(approach, 4.0, [&](std::size_t i) {
        if (i < two_seconds) return false;
        const TrackPoint& p = approach.points[i];
        const bool low = p.path_error_rad < 0.0 && !within_answer_band(approach.criteria, p);
        const bool nose_up = p.pitch_rad > approach.briefed_pitch_rad + rad_from_deg(1.0);
        const bool no_power = p.lever < approach.points[i - two_seconds].lever + 0.01 &&
                              p.lever < approach.briefed_lever + 0.05;
        return low && nose_up && no_power && speed_error_kt(approach, p) < -4.0;
    });
}

// Both out of tolerance at once.
Evidence low_and_slow(const Approach& approach) {
    return time_while(approach, 8.0, [&](std::size_t i) {
        const Deviations off = deviations(approach.scenario, approach.points[i]);
        return !off.path_in && off.path_rad < 0.0 && !off.speed_in && off.speed_mps < 0.0;
    });
}

// More than 1,000 ft/min for five seconds on end.
Evidence excessive_sink(const Approach& approach) {
    Evidence evidence;
    std::size_t begin = 0;
    for (std::size_t i = 0; i < approach.points.size(); ++i) {
        if (fpm_from_mps(approach.points[i].sink_mps) <= excessive_sink_fpm) begin = i + 1;
        if (begin > i) continue;
        const double strength = (approach.points[i].time_s - approach.points[begin].time_s) / 5.0;
        if (strength >= 1.0 && evidence.strength < 1.0) evidence.moments.push_back(begin);
        evidence.strength = std::max(evidence.strength, strength);
    }
    return evidence;
}

// High, the nose well down, the speed running away.
Evidence diving(const Approach& approach) {
    return time_while(approach, 4.0, [&](std::size_t i) {
        const TrackPoint& p = approach.points[i];
        return p.path_error_rad > 0.0 && speed_error_kt(approach, p) > 10.0 &&
               p.pitch_rad < approach.briefed_pitch_rad - rad_from_deg(1.0);
    });
}

// The lever closed below 500 ft: nothing left to take off.
Evidence idle_power(const Approach& approach) {
    const double idle = settled_power(approach.scenario.aircraft.engine, 0.0);
    return time_while(approach, 5.0, [&](std::size_t i) {
        const TrackPoint& p = approach.points[i];
        return height_ft(p) < idle_below_ft && p.power < idle + approach.criteria.least_power_over_idle;
    });
}

// Fast all the way below 500 ft, and steadily so.
Evidence too_fast(const Approach& approach) {
    std::vector<double> speeds;
    std::size_t first = 0;
    for (std::size_t i = 0; i < approach.points.size(); ++i) {
        if (height_ft(approach.points[i]) >= 500.0) continue;
        if (speeds.empty()) first = i;
        speeds.push_back(speed_error_kt(approach, approach.points[i]));
    }
    const Spread spread = spread_of(speeds);
    if (speeds.size() < 150 || spread.bias < spread.scatter) return {};
    return {spread.bias / 7.0, {first}};
}

}  // namespace slopewise::detect
