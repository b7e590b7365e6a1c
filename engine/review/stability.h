// Stable or not at a gate, and what was missing.
#pragma once

#include <array>
#include <string>

#include "review/criteria.h"
#include "review/gate_value.h"

namespace slopewise {

enum class Unstable { high, low, fast, slow, sinking, not_sinking, excessive_sink, idle, flap, pitch, lever };
inline constexpr std::array<const char*, 11> unstable_words{"high",
                                                            "low",
                                                            "fast",
                                                            "slow",
                                                            "sinking too fast",
                                                            "sinking too little",
                                                            "sink excessive",
                                                            "power at idle",
                                                            "flap not set",
                                                            "nose not settled",
                                                            "power not settled"};

struct Stability {
    std::array<bool, unstable_words.size()> missing{};
    bool improving = false;  // of path and speed, what is beyond half its limit is coming back

    bool stable() const;
    bool misses(Unstable what) const { return missing[static_cast<std::size_t>(what)]; }
};

// `gate` must have been reached.
Stability stability_at(const Scenario& scenario, const Criteria& criteria, const GateValue& gate);

// "stable", "stable, improving" or "not stable: low, slow".
std::string stability_words(const Stability& stability);

}  // namespace slopewise
