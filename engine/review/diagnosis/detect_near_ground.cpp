#include <algorithm>
#include <cmath>

#include "base/exact_math.h"
#include "base/units.h"
#include "review/diagnosis/detectors.h"

namespace slopewise::detect {
namespace {

// The path deviation at the lower gate less that at 200 ft, degrees; false where it is not known.
bool change_below_200(const Approach& approach, double& change_deg) {
    change_deg = deg_from_rad(approach.review.aim.ducking_rad);
    return approach.review.aim.ducking_known;
}

// Mean descent over the ground between two heights; false where too little was flown there.
bool mean_descent_deg(TrackPoints points, double from_ft, double to_ft, double& mean_deg) {
    double sink = 0.0, speed = 0.0;
    int count = 0;
    for (const TrackPoint& p : points) {
        if (height_ft(p) > from_ft || height_ft(p) < to_ft) continue;
        sink += p.sink_mps;
        speed += p.ground_speed_mps;
        ++count;
    }
    if (count < 50) return false;  // five seconds
    mean_deg = deg_from_rad(exact::atan2(sink, speed));
    return true;
}

// The largest movement of the stick that way (+1 pulled) within half a second, in the 1.5 s after a point.
double jerk_after(TrackPoints points, std::size_t at, double way) {
    double most = 0.0;
    for (std::size_t i = at; i < points.size() && points[i].time_s - points[at].time_s <= 1.5; ++i) {
        const std::size_t first = std::max(at - 1, i >= 5 ? i - 5 : 0);
        for (std::size_t j = first; j < i; ++j)
            most = std::max(most, way * (points[i].stick - points[j].stick));
    }
    return most;
}

}  // namespace

// On the path at 200 ft and not leaving it, then steeply down towards the threshold. (A straight flight that
// misses the aim point falls off the path too, but is leaving it before.)
Evidence ducking_under(const Approach& approach) {
    double change_deg = 0.0, descent_deg = 0.0;
    if (!change_below_200(approach, change_deg)) return {};
    const GateValue& at_200 = *gate_at(approach.review, near_ground_ft);
    const double nominal_rad = approach.scenario.surroundings.runway.lights.nominal_path_rad;
    if (std::abs(at_200.mean.path_rad) > rad_from_deg(0.3)) return {};
    if (at_200.path_trend_radps < rad_from_deg(-0.024)) return {};
    if (!mean_descent_deg(approach.points, 180.0, 60.0, descent_deg)) return {};
    if (descent_deg < deg_from_rad(nominal_rad) + 0.4) return {};
    return {-change_deg / 0.7, {at_200.point}};
}

// It rises instead, and the speed goes.
Evidence flattening(const Approach& approach) {
    double change_deg = 0.0;
    if (!change_below_200(approach, change_deg)) return {};
    const GateValue* at_200 = gate_at(approach.review, near_ground_ft);
    const GateValue* at_50 = gate_at(approach.review, 50.0);
    if (at_50->mean.path_rad < 0.0 || at_50->mean.path_m - at_200->mean.path_m < m_from_ft(5.0)) return {};
    if (at_50->cas_mps > at_200->cas_mps - mps_from_kt(3.0)) return {};
    return {change_deg / 0.5, {at_200->point}};
}

// Below 200 ft, a jerk of the stick within 1.5 s of a change of the lights, away from the new colour: a fifth
// of its travel within half a second.
Evidence chasing_lights(const Approach& approach) {
    Evidence evidence;
    const TrackPoints points = approach.points;
    for (std::size_t i = 1; i < points.size(); ++i) {
        const int before = points[i - 1].white_count, now = points[i].white_count;
        if (height_ft(points[i]) >= near_ground_ft || before < 0 || now < 0 || before == now) continue;
        const double strength = jerk_after(points, i, now > before ? -1.0 : 1.0) / 0.2;
        if (strength >= 1.0) evidence.moments.push_back(i);
        evidence.strength = std::max(evidence.strength, strength);
    }
    return evidence;
}

}  // namespace slopewise::detect
