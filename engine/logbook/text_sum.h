// The sum by which damage to a kept text is found.
#pragma once

#include <cstdint>
#include <cstdio>
#include <string>
#include <string_view>

namespace slopewise {

inline constexpr std::size_t text_sum_digits = 16;

// FNV-1a over the text's bytes, each as a 64-bit number, as base/hash.h adds them. The seven bytes of zero
// behind each are one multiplication here, since a class's files hold many megabytes.
inline std::string text_sum(std::string_view text) {
    constexpr std::uint64_t offset = 0xCBF29CE484222325ull, prime = 0x100000001B3ull;
    constexpr std::uint64_t squared = prime * prime, fourth = squared * squared, eighth = fourth * fourth;
    std::uint64_t state = offset;
    for (const char c : text) state = (state ^ static_cast<unsigned char>(c)) * eighth;
    char digits[text_sum_digits + 1];
    std::snprintf(digits, sizeof digits, "%016llx", static_cast<unsigned long long>(state));
    return digits;
}

}  // namespace slopewise
