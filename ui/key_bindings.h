// Which key does what while flying; each command has a usual key and may have another.
#pragma once

#include <array>
#include <string>
#include <string_view>
#include <vector>

#include "ui/keys.h"

namespace slopewise {

class Fields;
struct RawInput;

// By the usual key of each. What a stick key does to the nose, and which hand has the stick, is chosen
// elsewhere.
enum class KeyCommand {
    stick_up_key,
    stick_down_key,
    more_power,
    less_power,
    close_throttle,
    flap_down,
    flap_up,
    trim_up,
    trim_down,
    go_around,
    look_in,
    path_help,
    exchange,
    pause,
    same_again,
    mirror_start,
    screen_and_help,
    sound,
    count
};
inline constexpr std::size_t command_count = static_cast<std::size_t>(KeyCommand::count);

struct BoundKey {
    Key key = Key::count;
    char32_t gives = 0;  // what it gives where that is what it is best called: U+00F6; 0: nothing of the kind

    friend bool operator==(const BoundKey&, const BoundKey&) = default;
};

Key usual_key(KeyCommand command);
std::array<BoundKey, command_count> usual_keys();

struct KeyBindings {
    std::array<BoundKey, command_count> keys = usual_keys();
    bool sticky = false;  // a held key stays held after a press, until it is pressed again
    bool thumb_pads = true;

    const BoundKey& key_of(KeyCommand command) const { return keys[static_cast<std::size_t>(command)]; }
    friend bool operator==(const KeyBindings&, const KeyBindings&) = default;
};

// The same hands on the usual keys: each command's usual key is down exactly while its own key is. A key that
// was given to another command does nothing else any more; all other keys are as they were.
RawInput rebound(const RawInput& raw, const KeyBindings& bindings);

// Gives `key` to a command; the command that had it gets the first one's key. Which that was;
// KeyCommand::count: none. The key must be bindable.
KeyCommand bind_key(KeyBindings& bindings, KeyCommand command, const BoundKey& key);

// "PgDn", for a key cap; "Page down", in words.
std::string key_cap(const BoundKey& key);
std::string key_words(const BoundKey& key);

// An object of JSON: the keys that are not the usual ones, and the rest.
std::string key_bindings_text(const KeyBindings& bindings);

// A key that is not known, that no command may have or that two commands would have is told, and the usual
// key is used.
KeyBindings read_key_bindings(Fields fields);

}  // namespace slopewise
