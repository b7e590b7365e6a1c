// Seeded random numbers whose sequence is part of a lesson: the same seed gives the same numbers in
// every build. The generator is SplitMix64 (Steele, Lea and Flood 2014), whose state is one integer.
#pragma once

#include <cstdint>

namespace slopewise {

struct Random {
    std::uint64_t state = 0;
};

// The next 64 random bits.
constexpr std::uint64_t next_bits(Random& random) {
    random.state += 0x9E3779B97F4A7C15ull;
    std::uint64_t z = random.state;
    z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9ull;
    z = (z ^ (z >> 27)) * 0x94D049BB133111EBull;
    return z ^ (z >> 31);
}

// Uniform in [0, 1), in steps of 2^-53.
constexpr double next_uniform(Random& random) {
    return static_cast<double>(next_bits(random) >> 11) * (1.0 / 9007199254740992.0);
}

// Mean 0, variance 1, bounded by +-6: the sum of twelve uniforms less six (exact in every build,
// as it needs no logarithm).
constexpr double next_normal(Random& random) {
    double sum = -6.0;
    for (int i = 0; i < 12; ++i) sum += next_uniform(random);
    return sum;
}

}  // namespace slopewise
