#include "world/turbulence.h"

#include <cmath>

#include "base/exact_math.h"
#include "base/interpolate.h"
#include "base/units.h"

namespace slopewise {
namespace {

const double root_3 = std::sqrt(3.0);

// The vertical spectrum sigma^2 (L/pi) (1 + 3 (L W)^2) / (1 + (L W)^2)^2 is that of two equal first-order
// lags in series, T y1' = n - y1 and T y2' = y1 - y2 with T = L/V, read as sqrt(3) y1 + (1 - sqrt(3)) y2.
// Its variance is twice that of y1, so the states below carry variances 1/2, covariance 1/4 and 1/4.
constexpr double first_variance = 0.5;
constexpr double second_variance = 0.25;  // also the covariance of the two

void advance_vertical(Turbulence& state, double steps_of_t) {
    const double keep = exact::exp(-steps_of_t), keep_2 = keep * keep;
    // What the noise must add so that the covariances stay what they are: P - A P A^T.
    const double q11 = first_variance * (1.0 - keep_2);
    const double q12 = second_variance - keep_2 * (second_variance + steps_of_t * first_variance);
    const double q22 = second_variance - keep_2 * (second_variance + 2.0 * steps_of_t * second_variance +
                                                   square(steps_of_t) * first_variance);
    const double root_q11 = std::sqrt(q11);
    const double shared = root_q11 > 0.0 ? q12 / root_q11 : 0.0;
    const double own = std::sqrt(std::fmax(0.0, q22 - shared * shared));
    const double g1 = next_normal(state.random), g2 = next_normal(state.random);
    const double first = state.vertical_first;
    state.vertical_first = keep * first + root_q11 * g1;
    state.vertical_second = keep * (state.vertical_second + steps_of_t * first) + shared * g1 + own * g2;
}

}  // namespace

DrydenScales dryden_scales(double height_m, double w20_mps) {
    const double height_ft = clamp(ft_from_m(height_m), 10.0, 1000.0);
    const double base = exact::log(0.177 + 0.000823 * height_ft);
    const double vertical_sigma = 0.1 * w20_mps;
    return {m_from_ft(height_ft / exact::exp(1.2 * base)), m_from_ft(height_ft),
            vertical_sigma / exact::exp(0.4 * base), vertical_sigma};
}

Turbulence begin_turbulence(std::uint64_t seed) {
    Turbulence state;
    state.random.state = seed;
    state.along = next_normal(state.random);
    // A Cholesky factor of the stationary covariance: [1/2 1/4; 1/4 1/4].
    const double g1 = next_normal(state.random), g2 = next_normal(state.random);
    state.vertical_first = std::sqrt(first_variance) * g1;
    state.vertical_second = second_variance / std::sqrt(first_variance) * g1 +
                            std::sqrt(second_variance - square(second_variance) / first_variance) * g2;
    return state;
}

void advance_turbulence(Turbulence& turbulence, const DrydenScales& scales, double tas_mps, double dt_s) {
    const double keep = exact::exp(-tas_mps * dt_s / scales.along_length_m);
    turbulence.along =
        keep * turbulence.along + std::sqrt(1.0 - keep * keep) * next_normal(turbulence.random);
    advance_vertical(turbulence, tas_mps * dt_s / scales.vertical_length_m);
}

Gust gust_of(const Turbulence& turbulence, const DrydenScales& scales) {
    return {scales.along_sigma_mps * turbulence.along,
            scales.vertical_sigma_mps *
                (root_3 * turbulence.vertical_first + (1.0 - root_3) * turbulence.vertical_second)};
}

}  // namespace slopewise
