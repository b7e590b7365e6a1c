// Cumulative sums over passes and failures. The learning curve's (LC-CUSUM) signals when performance has
// become adequate; an ordinary one after it signals a relapse. Scores: D. J. Biau et al., "Quantitative and
// individualized assessment of the learning curve using LC-CUSUM", Br J Surg 95 (2008) 925-929.
#pragma once

#include <vector>

namespace slopewise {

struct CusumParameters {
    double inadequate_failure_rate = 0.40;  // p0
    double adequate_failure_rate = 0.15;    // p1
    double limit = 2.5;                     // h; 3.0 is the strict one
};
inline constexpr double strict_cusum_limit = 3.0;

// What a pass adds, ln((1 - p1) / (1 - p0)), and a failure, ln(p1 / p0), which is negative. Both rates lie
// between 0 and 1, the adequate one below the other.
double pass_score(const CusumParameters& parameters);
double failure_score(const CusumParameters& parameters);

struct Cusum {
    std::vector<double> sums;  // after each attempt, never below 0
    int signal_at = -1;        // index of the first attempt that brings the sum to the limit; -1: none
};

Cusum learning_cusum(const CusumParameters& parameters, const std::vector<bool>& passes);

// The same evidence the other way, from the attempt after the signal: failures add, passes take off.
Cusum relapse_cusum(const CusumParameters& parameters, const std::vector<bool>& passes);

}  // namespace slopewise
