#include <algorithm>
#include <cmath>

#include "base/units.h"
#include "review/diagnosis/detectors.h"

namespace slopewise::detect {
namespace {

bool low(const Approach& approach, const TrackPoint& point) {
    return point.path_error_rad < 0.0 && !within_answer_band(approach.criteria, point);
}

constexpr double late_s = 4.0;

bool flap_moved_near(const Approach& approach, std::size_t point) {
    return std::ranges::any_of(approach.review.configuration.steps, [&](const FlapStep& step) {
        return std::abs(approach.points[point].time_s - approach.points[step.point].time_s) < 20.0;
    });
}

// How long the lever stood while the error did not shrink; 0 where it stayed small.
double waited_s_of(const Approach& approach, const PathAnswer& answer) {
    const TrackPoint& begin = approach.points[answer.begin];
    double waited_s = 0.0, most_rad = 0.0;
    for (std::size_t i = answer.begin + 1; i < approach.points.size(); ++i) {
        const TrackPoint& p = approach.points[i];
        const double error_rad = std::abs(p.path_error_rad);
        if (within_answer_band(approach.criteria, p)) break;
        if ((answer.high ? -1.0 : 1.0) * (p.lever - begin.lever) >= lever_input) break;
        if (error_rad >= most_rad - rad_from_deg(0.05)) waited_s += p.time_s - approach.points[i - 1].time_s;
        most_rad = std::max(most_rad, error_rad);
    }
    return most_rad < rad_from_deg(0.35) ? 0.0 : waited_s;
}

}  // namespace

// In a headwind, the lever left near where it belongs in calm air while the approach sags below the path.
Evidence wind_ignored(const Approach& approach) {
    const double asked = approach.briefed_lever - approach.calm_lever;
    if (asked < 0.02) return {};  // too little wind to tell by
    double headwind_mps = 0.0;
    for (const TrackPoint& p : approach.points) headwind_mps += p.headwind_mps;
    headwind_mps /= static_cast<double>(approach.points.size());
    if (kt_from_mps(headwind_mps) < 5.0) return {};
    return time_while(approach, 10.0, [&](std::size_t i) {
        const TrackPoint& p = approach.points[i];
        return low(approach, p) && std::abs(p.lever - approach.calm_lever) < 0.4 * asked;
    });
}

// A path error of more than 0.35 degrees that stays or grows while the lever waits: more than four seconds.
// Where flap has just changed, the error is the flap's.
Evidence late_power(const Approach& approach) {
    Evidence evidence;
    for (const PathAnswer& answer : approach.review.path_answers) {
        if (flap_moved_near(approach, answer.begin)) continue;
        const double waited_s = waited_s_of(approach, answer);
        if (waited_s >= late_s) evidence.moments.push_back(answer.begin);
        evidence.strength = std::max(evidence.strength, waited_s / late_s);
    }
    return evidence;
}

// Through the path and out on the other side, again and again.
Evidence over_correcting(const Approach& approach) {
    Evidence evidence;
    for (const PathAnswer& answer : approach.review.path_answers)
        if (answer.overshot) evidence.moments.push_back(answer.begin);
    evidence.strength = static_cast<double>(evidence.moments.size()) / 2.0;
    return evidence;
}

// Steadily low: the picture or the aim is wrong, not the hand.
Evidence low_picture(const Approach& approach) {
    std::vector<double> errors;
    std::size_t first = 0;
    for (std::size_t i = 0; i < approach.points.size(); ++i) {
        const double height = height_ft(approach.points[i]);
        if (height >= 600.0 || height < 200.0) continue;
        if (errors.empty()) first = i;
        errors.push_back(path_error_deg(approach.points[i]));
    }
    const Spread spread = spread_of(errors);
    if (errors.size() < 200 || spread.scatter > 0.2) return {};
    return {-spread.bias / 0.35, {first}};
}

// The first input after a change of the lights the wrong way, at least twice and more often than not. A stick
// that is never quiet answers nothing, right or wrong.
Evidence lights_misread(const Approach& approach) {
    if (approach.review.controls.stick_reversals_per_min() > 20.0) return {};
    Evidence evidence;
    for (const LightAnswer& answer : approach.review.light_answers)
        if (answer.wrong_way_first && height_ft(approach.points[answer.begin]) > 200.0)
            evidence.moments.push_back(answer.begin);
    const Answers& all = approach.review.answers;
    if (2 * all.lights_wrong_way <= all.lights_answered) return {};
    evidence.strength = static_cast<double>(evidence.moments.size()) / 2.0;
    return evidence;
}

}  // namespace slopewise::detect
