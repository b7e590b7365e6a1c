// What the keys of flying mean in words; by its meaning a screen finds which key it is now.
#pragma once

#include <span>
#include <string>
#include <string_view>

#include "ui/view.h"

namespace slopewise::key_meaning {

inline constexpr std::string_view power = "more / less power";
inline constexpr std::string_view flap = "flap down / up a step";
inline constexpr std::string_view trim = "trim nose up / down";
inline constexpr std::string_view look_in = "hold: look at the panel";
inline constexpr std::string_view look_in_sticky = "look at the panel";
inline constexpr std::string_view go_around = "go around: full power";
inline constexpr std::string_view path_help = "hold: path help";
inline constexpr std::string_view path_help_sticky = "path help";
inline constexpr std::string_view close_throttle = "close the throttle";
inline constexpr std::string_view pause = "pause / screen and help";
inline constexpr std::string_view again = "same again / mirror start";
inline constexpr std::string_view exchange = "hand over / take back control";
inline constexpr std::string_view sound = "sound on / off";

// The cap of the key that means this, of two the one that is asked for; `usual` where the hints do not tell.
// Caps are short: the text takes no memory.
inline std::string key_for(std::span<const KeyHint> hints, std::string_view meaning, std::string_view usual,
                           bool second = false) {
    for (const KeyHint& hint : hints) {
        if (hint.meaning != meaning) continue;
        const std::string_view caps = hint.key;
        const std::size_t blank = caps.find(' ');
        if (blank == std::string_view::npos) return std::string(caps);
        return std::string(second ? caps.substr(blank + 1) : caps.substr(0, blank));
    }
    return std::string(usual);
}

// What one does to look in: "hold V", or "press V" where a press holds.
inline std::string look_in_way(std::span<const KeyHint> hints) {
    const std::string held = key_for(hints, look_in, "");
    return held.empty() ? "press " + key_for(hints, look_in_sticky, "V") : "hold " + held;
}
inline std::string path_help_key(std::span<const KeyHint> hints) {
    return key_for(hints, path_help, key_for(hints, path_help_sticky, "A"));
}

}  // namespace slopewise::key_meaning
