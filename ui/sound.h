// The flight made audible: no recorded sounds, a few lines of arithmetic. Whatever is heard is also seen: the
// power and the speed on the shelf, the warning and the gates as captions, the landing in the status.
#pragma once

#include <cstdint>
#include <span>

#include "ui/view.h"

namespace slopewise {

inline constexpr int sound_rate_hz = 44100;

// What is not told anew for so long is no longer so: the page is hidden, the program has stopped. (A machine
// that draws a frame in a second is slow, and still flies.)
inline constexpr double told_lasts_s = 1.5;

// How loud each source is, 0 to 1. They glide, so that nothing clicks.
struct SoundLevels {
    double all = 0, engine = 0, wind = 0, horn = 0, tyres = 0;
};

// A sound that is struck: it swells in a few thousandths of a second and fades; struck again it swells from
// where it is.
struct Struck {
    double level = 0.0;
    bool swelling = false;
};

// What the synthesis remembers between blocks.
struct SoundState {
    SoundView wanted;            // as last told
    double untold_s = 0.0;       // since then
    SoundLevels now;             // on their way to what is wanted
    double rpm = 0, power = 0;   // likewise
    double shaft = 0, horn = 0;  // shares of a turn
    double chime_low = 0, chime_high = 0, squeal = 0;
    Struck chimed, squealed;
    double wind_low = 0.0, tyres_low = 0.0;
    std::uint32_t noise = 1;
};

// Strokes of a four-stroke engine with four cylinders: each fires in every second turn.
constexpr double firing_hz(double rpm) { return rpm / 60.0 * 2.0; }

// What is to be heard from now on. One more gate chimes once; a wheel that begins to roll squeals.
void tell(SoundState& state, const SoundView& wanted);

// Fills one block of mono samples, each in [-1, 1].
void synthesise(SoundState& state, std::span<float> block);

// Nothing is heard of it any more.
bool silent(const SoundState& state);

}  // namespace slopewise
