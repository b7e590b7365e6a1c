#include "ui/keyboard.h"

#include "ui/input.h"

namespace slopewise {
namespace {

constexpr double repeat_after_s = 0.275, repeat_every_s = 0.05;  // common practice, no source
constexpr double longest_silence_s = 2.0;

std::size_t index(Key key) { return static_cast<std::size_t>(key); }

// Held down, these step on.
bool steps_on(Key key) {
    return key == Key::left || key == Key::right || key == Key::comma || key == Key::period;
}

// Where no place is told the key stands for it.
Key place_or(Key place, Key key) { return place == Key::other ? key : place; }

}  // namespace

void key_down(Keyboard& keyboard, Key place, Key key, char32_t gives, bool repeats) {
    if (repeats) return;
    keyboard.pressed[index(key)] = true;
    keyboard.gives = gives;
    keyboard.next_repeat_s[index(key)] = keyboard.read_at_s + repeat_after_s;
    const Key at = place_or(place, key);
    if (at != Key::other) keyboard.down_as[index(at)] = key;  // several keys are "other": none is held
}

void key_up(Keyboard& keyboard, Key place, Key key) {
    keyboard.down_as[index(place_or(place, key))] = Key::count;
}

void let_go(Keyboard& keyboard) { keyboard.down_as.fill(Key::count); }

void read(Keyboard& keyboard, double wall_s, RawInput& raw) {
    if (wall_s - keyboard.read_at_s > longest_silence_s) let_go(keyboard);
    keyboard.read_at_s = wall_s;
    raw.pressed = keyboard.pressed;
    raw.held = keyboard.pressed;
    raw.gives = keyboard.gives;
    keyboard.pressed = {};
    for (const Key key : keyboard.down_as) {
        if (key == Key::count) continue;
        raw.held[index(key)] = true;
        double& next_s = keyboard.next_repeat_s[index(key)];
        if (!steps_on(key) || wall_s < next_s) continue;
        raw.pressed[index(key)] = true;
        next_s = wall_s + repeat_every_s;
    }
}

}  // namespace slopewise
