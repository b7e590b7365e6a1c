#include "ui/sound.h"

#include <algorithm>
#include <cmath>

#include "base/interpolate.h"
#include "base/units.h"

namespace slopewise {
namespace {

constexpr double step_s = 1.0 / sound_rate_hz;
constexpr double glide = 0.0004;  // share of the way a sample: about 60 ms
constexpr double unheard = 1e-5;  // below the last of 16 bits
constexpr double horn_hz = 640.0;
constexpr double loud_airspeed_kt = 100.0;  // the wind's measure
constexpr double loud_rolling_kt = 40.0;    // and the tyres'

constexpr double chime_hz = 880.0, chime_fades_s = 0.35;
constexpr double squeal_hz = 1150.0, squeal_fades_s = 0.09;
constexpr double swells_s = 0.002;

double next_phase(double phase, double frequency_hz) {
    const double next = phase + frequency_hz * step_s;
    return next >= 1.0 ? next - 1.0 : next;
}

double next_noise(std::uint32_t& noise) {
    noise = noise * 1664525u + 1013904223u;
    return static_cast<double>(noise >> 8) / 8388608.0 - 1.0;
}

double wave(double phase) { return std::sin(2.0 * pi * phase); }

void approach(double& level, double wanted) { level += glide * (wanted - level); }

SoundLevels wanted_levels(const SoundView& wanted, bool told) {
    SoundLevels levels;
    // What is heard as half as loud is about a third of the pressure: the lever goes by the square (common
    // practice, no source).
    levels.all = wanted.audible && told ? square(clamp(wanted.volume, 0.0, 1.0)) : 0.0;
    levels.engine = wanted.rpm > 0.0 ? 1.0 : 0.0;
    levels.wind = std::min(1.5, square(wanted.airspeed_kt / loud_airspeed_kt));  // dynamic pressure
    levels.horn = wanted.stall_warning ? 1.0 : 0.0;
    levels.tyres = wanted.on_runway ? clamp(wanted.airspeed_kt / loud_rolling_kt, 0.0, 1.0) : 0.0;
    return levels;
}

void approach(SoundLevels& now, const SoundLevels& wanted) {
    approach(now.all, wanted.all);
    approach(now.engine, wanted.engine);
    approach(now.wind, wanted.wind);
    approach(now.horn, wanted.horn);
    approach(now.tyres, wanted.tyres);
}

// The firing and its first overtones by sin (k+1)x = 2 cos x sin kx - sin (k-1)x, the louder the more power;
// under them the turn of the shaft, since no four cylinders are quite alike.
double engine_sample(const SoundState& state) {
    const double x = 2.0 * pi * 2.0 * state.shaft;
    const double twice_cos = 2.0 * std::cos(x);
    double before = 0.0, now = std::sin(x), share = 1.0, sum = 0.12 * wave(state.shaft);
    for (int overtone = 1; overtone <= 6; ++overtone) {
        sum += share * now;
        share *= 0.45 + 0.25 * state.power;
        const double next = twice_cos * now - before;
        before = now;
        now = next;
    }
    return (0.06 + 0.10 * state.power) * sum;
}

double next_level(Struck& struck, double fades_s) {
    if (struck.swelling) {
        struck.level += step_s / swells_s * (1.0 - struck.level);
        struck.swelling = struck.level < 0.95;
    } else {
        struck.level -= step_s / fades_s * struck.level;
    }
    return struck.level;
}

double next_sample(SoundState& state) {
    state.shaft = next_phase(state.shaft, state.rpm / 60.0);
    state.horn = next_phase(state.horn, horn_hz);
    state.wind_low += 0.08 * (next_noise(state.noise) - state.wind_low);
    state.tyres_low += 0.02 * (next_noise(state.noise) - state.tyres_low);
    state.chime_low = next_phase(state.chime_low, chime_hz);
    state.chime_high = next_phase(state.chime_high, 1.5 * chime_hz);
    state.squeal = next_phase(state.squeal, squeal_hz);
    const double chime = next_level(state.chimed, chime_fades_s);
    const double squeal = next_level(state.squealed, squeal_fades_s);
    const SoundLevels& now = state.now;
    double sum = 0.35 * now.wind * state.wind_low + 0.9 * now.tyres * state.tyres_low;
    if (now.engine > unheard) sum += now.engine * engine_sample(state);
    if (now.horn > unheard) sum += 0.2 * now.horn * wave(state.horn);
    if (chime > unheard) sum += chime * (0.14 * wave(state.chime_low) + 0.06 * wave(state.chime_high));
    if (squeal > unheard) sum += 0.1 * squeal * (wave(state.squeal) + 3.0 * state.wind_low);
    return now.all * sum;
}

}  // namespace

void tell(SoundState& state, const SoundView& wanted) {
    if (wanted.audible && wanted.gate_chimes > state.wanted.gate_chimes) state.chimed.swelling = true;
    if (wanted.audible && wanted.on_runway && !state.wanted.on_runway) state.squealed.swelling = true;
    state.wanted = wanted;
    state.untold_s = 0.0;
}

void synthesise(SoundState& state, std::span<float> block) {
    state.untold_s += static_cast<double>(block.size()) * step_s;
    const SoundLevels wanted = wanted_levels(state.wanted, state.untold_s < told_lasts_s);
    if (silent(state) && wanted.all == 0.0) {
        state.chimed = state.squealed = {};  // what nobody heard does not ring on
        std::fill(block.begin(), block.end(), 0.0f);
        return;
    }
    for (float& sample : block) {
        approach(state.now, wanted);
        approach(state.rpm, state.wanted.rpm);
        approach(state.power, clamp(state.wanted.power, 0.0, 1.0));
        sample = static_cast<float>(clamp(next_sample(state), -1.0, 1.0));
    }
}

bool silent(const SoundState& state) { return state.now.all < unheard; }

}  // namespace slopewise
