// The flight made audible: no recorded sounds, a few lines of arithmetic.
#pragma once

#include <cstdint>
#include <span>

#include "ui/view.h"

namespace slopewise {

// What the synthesis remembers between blocks.
struct SoundState {
    SoundView now;  // glides towards what is wanted, so that nothing clicks
    double loudness = 0.0;
    double engine_phase = 0.0, horn_phase = 0.0;
    double wind_low = 0.0;  // low-passed noise
    std::uint32_t noise = 1;
};

inline constexpr int sound_rate_hz = 44100;

// Fills one block of mono samples, each in [-1, 1].
void synthesise(SoundState& state, const SoundView& wanted, std::span<float> block);

}  // namespace slopewise
