#include "ui/sound.h"

#include <cmath>

#include "base/interpolate.h"
#include "base/units.h"

namespace slopewise {
namespace {

constexpr double glide = 0.0004;                  // share of the way a sample: about 60 ms
constexpr double idle_hz = 26.0, full_hz = 82.0;  // firing pulses of a four-cylinder engine, 800 to 2,450 rpm
constexpr double horn_hz = 640.0;

double next_phase(double phase, double frequency_hz) {
    const double next = phase + frequency_hz / sound_rate_hz;
    return next >= 1.0 ? next - 1.0 : next;
}

double next_noise(std::uint32_t& noise) {
    noise = noise * 1664525u + 1013904223u;
    return static_cast<double>(noise >> 8) / 8388608.0 - 1.0;
}

double wave(double phase, double harmonic) { return std::sin(2.0 * pi * phase * harmonic); }

}  // namespace

void synthesise(SoundState& state, const SoundView& wanted, std::span<float> block) {
    for (float& sample : block) {
        state.loudness += glide * ((wanted.audible ? 1.0 : 0.0) - state.loudness);
        state.now.power += glide * (wanted.power - state.now.power);
        state.now.airspeed_kt += glide * (wanted.airspeed_kt - state.now.airspeed_kt);

        state.engine_phase =
            next_phase(state.engine_phase, lerp(idle_hz, full_hz, std::sqrt(state.now.power)));
        const double firing = 0.6 * wave(state.engine_phase, 1.0) + 0.3 * wave(state.engine_phase, 2.0) +
                              0.15 * wave(state.engine_phase, 3.0);
        state.wind_low += 0.08 * (next_noise(state.noise) - state.wind_low);
        const double wind = state.wind_low * square(state.now.airspeed_kt / 100.0);
        state.horn_phase = next_phase(state.horn_phase, horn_hz);
        const double horn = wanted.stall_warning ? 0.25 * wave(state.horn_phase, 1.0) : 0.0;

        const double mixed = state.loudness * ((0.05 + 0.11 * state.now.power) * firing + 0.35 * wind + horn);
        sample = static_cast<float>(clamp(mixed, -1.0, 1.0));
    }
}

}  // namespace slopewise
