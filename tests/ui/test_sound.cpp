// What is heard, as samples: tones found by a Fourier sum, loudness, nothing that clicks.
#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <string>
#include <vector>

#include "base/units.h"
#include "tests/check.h"
#include "ui/sound.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

constexpr std::size_t block = 1024;  // as the devices ask for it

SoundView engine_at(double rpm, double power = 0.3) {
    SoundView wanted;
    wanted.audible = true;
    wanted.rpm = rpm;
    wanted.power = power;
    return wanted;
}

// Told anew before each block, as by frames.
std::vector<float> hear(SoundState& state, const SoundView& wanted, double seconds) {
    std::vector<float> all;
    std::array<float, block> samples{};
    while (static_cast<double>(all.size()) < seconds * sound_rate_hz) {
        tell(state, wanted);
        synthesise(state, samples);
        all.insert(all.end(), samples.begin(), samples.end());
    }
    return all;
}

double loudness(const std::vector<float>& samples) {
    double sum = 0.0;
    for (const float sample : samples) sum += static_cast<double>(sample) * static_cast<double>(sample);
    return std::sqrt(sum / static_cast<double>(samples.size()));
}

float largest(const std::vector<float>& samples) {
    float most = 0.0f;
    for (const float sample : samples) most = std::max(most, std::abs(sample));
    return most;
}

// The amplitude of one frequency, by a Fourier sum under a Hann window.
double amplitude_at(const std::vector<float>& samples, double hz) {
    double real = 0.0, imaginary = 0.0, weights = 0.0;
    const double count = static_cast<double>(samples.size());
    for (std::size_t i = 0; i < samples.size(); ++i) {
        const double at = static_cast<double>(i);
        const double weight = 0.5 - 0.5 * std::cos(2.0 * pi * at / count);
        const double angle = 2.0 * pi * hz * at / sound_rate_hz;
        real += weight * static_cast<double>(samples[i]) * std::cos(angle);
        imaginary += weight * static_cast<double>(samples[i]) * std::sin(angle);
        weights += weight;
    }
    return 2.0 * std::hypot(real, imaginary) / weights;
}

double strongest_hz(const std::vector<float>& samples, double from_hz, double to_hz) {
    double best_hz = 0.0, best = 0.0;
    for (double hz = from_hz; hz <= to_hz; hz += 0.5) {
        const double amplitude = amplitude_at(samples, hz);
        if (amplitude > best) best = amplitude, best_hz = hz;
    }
    return best_hz;
}

float largest_step(const std::vector<float>& samples, float before = 0.0f) {
    float most = 0.0f;
    for (const float sample : samples) {
        most = std::max(most, std::abs(sample - before));
        before = sample;
    }
    return most;
}

// Chimes in what is heard: how often its tone comes up from nothing, in pieces of a twentieth of a second.
int chimes_in(const std::vector<float>& samples) {
    constexpr std::size_t piece = sound_rate_hz / 20;
    int count = 0;
    double before = 0.0;
    for (std::size_t i = 0; i + piece <= samples.size(); i += piece) {
        const auto at = samples.begin() + static_cast<std::ptrdiff_t>(i);
        const double now = amplitude_at({at, at + piece}, 880.0);
        if (now > 0.04 && now > 2.0 * before) ++count;
        before = now;
    }
    return count;
}

}  // namespace

TEST_CASE("sound: silence is silent, power is loud, and no sample leaves its range") {
    SoundState quiet;
    CHECK(largest(hear(quiet, {}, 1.0)) == 0.0f);
    CHECK(silent(quiet));
    SoundState idle, full, everything;
    const double at_idle = loudness(hear(idle, engine_at(1100, 0.05), 1.0));
    CHECK(at_idle > 0.01);
    CHECK(loudness(hear(full, engine_at(2400, 1.0), 1.0)) > 1.5 * at_idle);
    SoundView all = engine_at(2700, 1.0);
    all.volume = 1.0;
    all.airspeed_kt = 160.0;
    all.stall_warning = all.on_runway = true;
    all.gate_chimes = 1;
    const std::vector<float> loudest = hear(everything, all, 3.0);
    CHECK(largest(loudest) <= 1.0f);
    CHECK(largest(loudest) > 0.3f);  // and uses it
}

TEST_CASE("sound: the engine's strongest tone is its firing, twice a turn, whatever its speed") {
    CHECK(firing_hz(1800) == 60.0);  // four strokes, four cylinders: two of them fire in each turn
    for (const double rpm : {1100.0, 1800.0, 2400.0}) {
        CAPTURE(rpm);
        SoundState state;
        hear(state, engine_at(rpm), 1.0);  // it has come up to speed
        // Over a second a Fourier sum tells tones a hertz or two apart.
        CHECK_NEAR(strongest_hz(hear(state, engine_at(rpm), 1.0), 10.0, 300.0), firing_hz(rpm), 0.5);
    }
}

TEST_CASE("sound: the wind grows with dynamic pressure, and more power sounds brighter") {
    const auto wind_at = [](double kt) {
        SoundView wanted = engine_at(0.0);
        wanted.airspeed_kt = kt;
        SoundState state;
        hear(state, wanted, 0.5);
        return loudness(hear(state, wanted, 2.0));
    };
    CHECK(wind_at(0.0) < 1e-6);
    // Noise over two seconds keeps its loudness within a few parts in a hundred.
    CHECK_NEAR(wind_at(80.0) / wind_at(40.0), 4.0, 0.2);
    const auto overtone_share = [](double power) {
        SoundState state;
        hear(state, engine_at(1800, power), 1.0);
        const std::vector<float> heard = hear(state, engine_at(1800, power), 1.0);
        return amplitude_at(heard, 180.0) / amplitude_at(heard, 60.0);
    };
    CHECK(overtone_share(1.0) > 1.5 * overtone_share(0.1));
}

TEST_CASE("sound: the warning is a tone of its own, tyres are heard only while they roll") {
    SoundView warned = engine_at(1100, 0.05);
    SoundState state, rolling, flying;
    hear(state, warned, 1.0);
    CHECK(amplitude_at(hear(state, warned, 0.5), 640.0) < 0.01);
    warned.stall_warning = true;
    hear(state, warned, 0.5);
    CHECK(amplitude_at(hear(state, warned, 0.5), 640.0) > 0.1);

    SoundView wheels = engine_at(0.0);
    wheels.airspeed_kt = 45.0;
    hear(flying, wheels, 1.0);
    const double in_the_air = loudness(hear(flying, wheels, 1.0));
    wheels.on_runway = true;
    hear(rolling, wheels, 1.0);  // the squeal of the first touch is over
    CHECK(loudness(hear(rolling, wheels, 1.0)) > 1.5 * in_the_air);
}

TEST_CASE("sound: volume scales what is heard by its square, down to nothing") {
    const auto at = [](double volume) {
        SoundView wanted = engine_at(1800);
        wanted.volume = volume;
        SoundState state;
        hear(state, wanted, 1.0);
        return loudness(hear(state, wanted, 1.0));
    };
    CHECK_NEAR(at(0.5) / at(1.0), 0.25, 1e-3);  // the same tone: only its level differs
    CHECK_NEAR(at(0.1) / at(1.0), 0.01, 1e-3);
    CHECK(at(0.0) == 0.0);
}

TEST_CASE("sound: one more gate chimes once, and a new flight or silence chimes not at all") {
    SoundView wanted;
    wanted.audible = true;
    SoundState state;
    CHECK(chimes_in(hear(state, wanted, 1.0)) == 0);
    wanted.gate_chimes = 1;
    CHECK(chimes_in(hear(state, wanted, 4.0)) == 1);
    wanted.gate_chimes = 2;
    CHECK(chimes_in(hear(state, wanted, 4.0)) == 1);
    wanted.gate_chimes = 0;
    CHECK(chimes_in(hear(state, wanted, 2.0)) == 0);
    wanted.audible = false;
    wanted.gate_chimes = 1;
    CHECK(chimes_in(hear(state, wanted, 2.0)) == 0);
    wanted.audible = true;
    CHECK(chimes_in(hear(state, wanted, 2.0)) == 0);  // it is not made up for
}

// A click is a step that the tones themselves do not make. Each source alone is switched on and off at full
// volume at many moments of its swing; its own steepest slope is its amplitude times 2 pi f over the rate.
TEST_CASE("sound: nothing clicks, whatever begins or ends") {
    struct Row {
        std::string source;
        SoundView on;
        double most_step;
    };
    SoundView horn = engine_at(0.0), chime = horn, engine = engine_at(2400, 1.0), wind = horn, tyres = horn;
    horn.stall_warning = true;
    chime.gate_chimes = 1;
    wind.airspeed_kt = 100.0;
    tyres.on_runway = true;
    tyres.airspeed_kt = 40.0;
    const double per_hz = 2.0 * pi / sound_rate_hz;
    const std::array<Row, 5> rows{{
        {"horn", horn, 0.2 * 640.0 * per_hz},
        {"chime", chime,
         (0.14 * 880.0 + 0.06 * 1320.0) * per_hz + 0.2 / (0.002 * sound_rate_hz)},  // and its swell
        // Six overtones, the k-th 0.7^(k-1) as loud and k times as steep: 0.16 x 80 Hz x 11.8 at most.
        {"engine", engine, 0.16 * 80.0 * 11.8 * per_hz},
        // Noise: what a low pass lets through in one sample; 2 is its widest swing.
        {"wind", wind, 0.35 * 0.08 * 2.0},
        {"tyres and squeal", tyres,
         0.9 * 0.02 * 2.0 + 0.35 * 0.16 * 0.08 * 2.0 +
             0.1 * (1150.0 * per_hz + 3.0 * 0.08 * 2.0 + 4.0 / (0.002 * sound_rate_hz))},
    }};
    for (const Row& row : rows) {
        CAPTURE(row.source);
        SoundState state;
        SoundView off = row.on;
        off.audible = false;
        SoundView on = row.on;
        on.volume = 1.0;
        SoundView without = engine_at(0.0);
        without.volume = 1.0;
        float before = 0.0f, most = 0.0f;
        for (int i = 0; i < 12; ++i) {
            on.gate_chimes = row.on.gate_chimes > 0 ? i + 1 : 0;
            // Begun, muted, heard again, then stopped by itself: after times that fall anywhere in a swing.
            for (const SoundView* next : {&on, &off, &on, &without}) {
                const std::vector<float> heard = hear(state, *next, 0.05 + 0.0237 * i);
                most = std::max(most, largest_step(heard, before));
                before = heard.back();
            }
        }
        CHECK(static_cast<double>(most) <= row.most_step * 1.02);  // the glide of the level adds a little
        CHECK(static_cast<double>(most) > 0.1 * row.most_step);    // it was heard
    }
}

TEST_CASE("sound: a program that has stopped telling falls silent, and is heard again when it goes on") {
    SoundState state;
    hear(state, engine_at(1800), 1.0);
    std::vector<float> second(sound_rate_hz);
    synthesise(state, second);
    CHECK(loudness(second) > 0.01);  // a slow frame is no silence
    std::array<float, block> samples{};
    for (int i = 0; i < 60; ++i) synthesise(state, samples);  // 1.4 s more
    CHECK(silent(state));
    synthesise(state, samples);
    CHECK(std::ranges::all_of(samples, [](float sample) { return sample == 0.0f; }));
    CHECK(loudness(hear(state, engine_at(1800), 1.0)) > 0.01);
}
