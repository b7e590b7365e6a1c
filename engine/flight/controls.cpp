#include "flight/controls.h"

#include <cmath>

#include "base/interpolate.h"

namespace slopewise {
namespace {

constexpr double signed_steps = 32767.0;
constexpr double unsigned_steps = 65535.0;

double finite_or_zero(double value) { return std::isfinite(value) ? value : 0.0; }
double rounded(double value) { return std::floor(value + 0.5); }

std::int16_t signed_16(double value) {
    return static_cast<std::int16_t>(rounded(clamp(finite_or_zero(value), -1.0, 1.0) * signed_steps));
}
std::uint16_t unsigned_16(double value) {
    return static_cast<std::uint16_t>(rounded(clamp(finite_or_zero(value), 0.0, 1.0) * unsigned_steps));
}

}  // namespace

Controls quantize(const ControlPositions& positions) {
    const int flap = positions.flap < 0 ? 0 : (positions.flap > 255 ? 255 : positions.flap);
    return {signed_16(positions.stick), unsigned_16(positions.throttle), signed_16(positions.trim),
            static_cast<std::uint8_t>(flap), positions.go_around};
}

ControlPositions positions_of(const Controls& controls) {
    return {controls.stick / signed_steps, controls.throttle / unsigned_steps, controls.trim / signed_steps,
            controls.flap, controls.go_around};
}

}  // namespace slopewise
