#include <algorithm>
#include <cmath>

#include "base/units.h"
#include "review/diagnosis/detectors.h"

namespace slopewise::detect {
namespace {

// Means over half a second before each point: what the arm does, without the tremor of the fingers.
std::vector<double> steadied_stick(TrackPoints points) {
    constexpr std::size_t half_second = 5;
    std::vector<double> means;
    double sum = 0.0;
    for (std::size_t i = 0; i < points.size(); ++i) {
        sum += points[i].stick;
        if (i >= half_second) sum -= points[i - half_second].stick;
        means.push_back(sum / static_cast<double>(std::min(i + 1, half_second)));
    }
    return means;
}

struct NeedleAndStick {
    double correlation = 0.0, stick_per_kt = 0.0;
};

// Of the stick with the airspeed half a second before.
NeedleAndStick needle_and_stick(TrackPoints points) {
    constexpr std::size_t lag = 5;
    const std::vector<double> all = steadied_stick(points);
    std::vector<double> stick, speed;
    for (std::size_t i = lag; i < points.size(); ++i) {
        stick.push_back(all[i]);
        speed.push_back(kt_from_mps(points[i - lag].cas_mps));
    }
    const Spread a = spread_of(stick), b = spread_of(speed);
    if (a.scatter == 0.0 || b.scatter == 0.0) return {};
    double product = 0.0;
    for (std::size_t i = 0; i < stick.size(); ++i) product += (stick[i] - a.bias) * (speed[i] - b.bias);
    product /= static_cast<double>(stick.size());
    return {product / (a.scatter * b.scatter), product / (b.scatter * b.scatter)};
}

}  // namespace

// The stick back and forth thirty times a minute, once in two seconds.
Evidence over_controlling(const Approach& approach) {
    const ControlActivity& hand = approach.review.controls;
    if (hand.time_s < 20.0) return {};
    return {hand.stick_reversals_per_min() / 30.0, {0}};
}

// The stick follows the airspeed.
Evidence chasing_needle(const Approach& approach) {
    if (approach.review.controls.time_s < 30.0) return {};
    const NeedleAndStick found = needle_and_stick(approach.points);
    if (found.correlation < 0.25) return {};
    return {found.stick_per_kt / 0.02, {0}};
}

// A stick that is held to the end.
Evidence not_trimming(const Approach& approach) {
    if (approach.review.controls.time_s < 40.0) return {};
    return {std::abs(approach.review.configuration.held_stick) / 0.08, {approach.points.size() - 1}};
}

}  // namespace slopewise::detect
