#include <cmath>

#include "review/diagnosis/detectors.h"

// A tenth to a quarter of the time inside, in short looks, is what is aimed at: common practice, no source.
// (More outside is not simply better: who never reads the airspeed cannot see it drift.)
namespace slopewise::detect {
namespace {

constexpr double long_enough_s = 30.0;  // shorter, and one look is a large share

bool measured(const Approach& approach) {
    return approach.panel_share >= 0.0 && approach.review.summary.scored_s >= long_enough_s;
}

}  // namespace

// 35 % of the time inside, or more.
Evidence staring_inside(const Approach& approach) {
    if (!measured(approach)) return {};
    return {approach.panel_share / most_inside, {0}};
}

// Less than 5 % of the time inside, and the speed more than five knots off for ten seconds in all.
Evidence never_inside(const Approach& approach) {
    if (!measured(approach) || approach.panel_share >= least_inside) return {};
    return time_while(approach, 10.0, [&](std::size_t i) {
        return std::abs(speed_error_kt(approach, approach.points[i])) > 5.0;
    });
}

}  // namespace slopewise::detect
