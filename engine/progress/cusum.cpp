#include "progress/cusum.h"

#include <algorithm>

#include "base/exact_math.h"

namespace slopewise {
namespace {

Cusum sum_up(const std::vector<bool>& passes, double for_pass, double for_failure, double limit) {
    Cusum cusum;
    double sum = 0.0;
    for (std::size_t i = 0; i < passes.size(); ++i) {
        sum = std::max(0.0, sum + (passes[i] ? for_pass : for_failure));
        cusum.sums.push_back(sum);
        if (cusum.signal_at < 0 && sum >= limit) cusum.signal_at = static_cast<int>(i);
    }
    return cusum;
}

}  // namespace

double pass_score(const CusumParameters& p) {
    return exact::log((1.0 - p.adequate_failure_rate) / (1.0 - p.inadequate_failure_rate));
}

double failure_score(const CusumParameters& p) {
    return exact::log(p.adequate_failure_rate / p.inadequate_failure_rate);
}

Cusum learning_cusum(const CusumParameters& parameters, const std::vector<bool>& passes) {
    return sum_up(passes, pass_score(parameters), failure_score(parameters), parameters.limit);
}

Cusum relapse_cusum(const CusumParameters& parameters, const std::vector<bool>& passes) {
    return sum_up(passes, -pass_score(parameters), -failure_score(parameters), parameters.limit);
}

}  // namespace slopewise
