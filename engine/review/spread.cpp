#include "review/spread.h"

#include <cassert>
#include <cmath>

#include "base/interpolate.h"

namespace slopewise {
namespace {

double mean_of(std::span<const double> values) {
    double sum = 0.0;
    for (const double value : values) sum += value;
    return sum / static_cast<double>(values.size());
}

}  // namespace

Spread spread_of(std::span<const double> values) {
    Spread spread;
    if (values.empty()) return spread;
    const double count = static_cast<double>(values.size());
    spread.bias = mean_of(values);
    double variance = 0.0, mean_square = 0.0;
    for (const double value : values) {
        variance += square(value - spread.bias);
        mean_square += square(value);
    }
    spread.scatter = std::sqrt(variance / count);
    spread.rms = std::sqrt(mean_square / count);
    return spread;
}

double slope_of(std::span<const double> times_s, std::span<const double> values) {
    assert(times_s.size() == values.size());
    if (times_s.size() < 2) return 0.0;
    const double mean_time = mean_of(times_s), mean_value = mean_of(values);
    double product = 0.0, squares = 0.0;
    for (std::size_t i = 0; i < times_s.size(); ++i) {
        product += (times_s[i] - mean_time) * (values[i] - mean_value);
        squares += square(times_s[i] - mean_time);
    }
    return squares > 0.0 ? product / squares : 0.0;
}

}  // namespace slopewise
