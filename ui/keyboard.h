// The keys that are down, from the events of a keyboard: those that repeat, get lost or come without a place.
#pragma once

#include <array>

#include "ui/keys.h"

namespace slopewise {

struct RawInput;

struct Keyboard {
    static constexpr std::size_t keys = static_cast<std::size_t>(Key::count);

    std::array<Key, keys> down_as{};   // by place: the key it was when it went down; Key::count: it is up
    std::array<bool, keys> pressed{};  // by key: it went down since the last reading
    std::array<double, keys> next_repeat_s{};
    char32_t gives = 0;  // the key that went down last, where no key is known by it
    double read_at_s = 0;

    Keyboard() { down_as.fill(Key::count); }
};

// `repeats`: it was down already and the machine says so again.
void key_down(Keyboard& keyboard, Key place, Key key, char32_t gives, bool repeats);
void key_up(Keyboard& keyboard, Key place, Key key);

// Whoever looks elsewhere lets go of everything: the key that comes up there is not told here.
void let_go(Keyboard& keyboard);

// What is held and was pressed since the last reading, into `raw`; a tap shorter than a frame is held for
// that frame. The keys that step repeat while they are held. After two seconds without a reading nothing
// counts as held, since keys that came up before a window of the machine's own (a question, a file chooser)
// are not told.
void read(Keyboard& keyboard, double wall_s, RawInput& raw);

}  // namespace slopewise
