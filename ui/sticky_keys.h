// For who cannot hold a key down while another hand works: a press holds, the next one lets go.
#pragma once

#include <array>
#include <string>

namespace slopewise {

struct RawInput;

inline constexpr std::size_t sticky_count = 8;

// What is held so, in the order of sticky_keys.cpp.
struct HeldSo {
    std::array<bool, sticky_count> on{};

    bool any() const;
};

// The input as if what is held so were held by a hand. A press on a key of stick, power, trim, look or path
// help holds it; a press on it again, or on its opposite, lets go, and does nothing else. Going around,
// pausing and handing over let go of everything.
RawInput stuck(HeldSo& held, const RawInput& raw);

// "Held: nose up, more power", 64 bytes at most; empty when nothing is. `up_key_pushes` says what a stick key
// does.
void held_words(const HeldSo& held, bool up_key_pushes, std::string& words);

}  // namespace slopewise
