#include "ui/key_bindings.h"

#include <algorithm>
#include <utility>

#include "data/fields.h"
#include "ui/input.h"
#include "ui/key_names.h"

namespace slopewise {
namespace {

struct CommandName {
    std::string_view id;
    Key usual;
};

constexpr std::array<CommandName, command_count> commands{{{"stick_up_key", Key::up},
                                                           {"stick_down_key", Key::down},
                                                           {"more_power", Key::e},
                                                           {"less_power", Key::d},
                                                           {"close_throttle", Key::x},
                                                           {"flap_down", Key::f},
                                                           {"flap_up", Key::r},
                                                           {"trim_up", Key::u},
                                                           {"trim_down", Key::j},
                                                           {"go_around", Key::g},
                                                           {"look_in", Key::v},
                                                           {"path_help", Key::a},
                                                           {"exchange", Key::c},
                                                           {"pause", Key::p},
                                                           {"same_again", Key::n},
                                                           {"mirror_start", Key::m},
                                                           {"screen_and_help", Key::h},
                                                           {"sound", Key::s}}};

constexpr std::array<std::string_view, 2> switches{"off", "on"};

constexpr std::size_t longest_key_text = 40;  // bytes; the longest of ours has 20

std::size_t index(Key key) { return static_cast<std::size_t>(key); }

std::string kept_text(const BoundKey& bound) {
    std::string text(name_of(bound.key).id);
    if (bound.gives != 0) text += " " + character_words(bound.gives);
    return text;
}

// "semicolon", "semicolon ö"; a key that there is none of comes back as Key::count.
BoundKey bound_of(std::string_view text) {
    const std::size_t blank = text.find(' ');
    BoundKey bound{key_of_id(text.substr(0, blank))};
    if (bound.key == Key::count || !name_of(bound.key).bindable) return {};
    if (blank == std::string_view::npos) return bound;
    bound.gives = character_of(text.substr(blank + 1));
    return bound.gives == 0 ? BoundKey{} : bound;
}

// Two commands with one key: the one whose key is not its usual one gets that, until no two are left. Each
// step makes one more command usual, and usual keys differ.
void part_those_with_one_key(KeyBindings& bindings, Fields& fields) {
    for (std::size_t i = 0; i < command_count;) {
        const auto same = [&](std::size_t j) {
            return j != i && bindings.keys[j].key == bindings.keys[i].key;
        };
        std::size_t other = 0;
        while (other < command_count && !same(other)) ++other;
        if (other == command_count) {
            ++i;
            continue;
        }
        const std::size_t put_back = bindings.keys[i].key == commands[i].usual ? other : i;
        fields.report(commands[put_back].id, "is the key of another command, too", "a key of its own");
        bindings.keys[put_back] = {commands[put_back].usual};
        i = 0;
    }
}

}  // namespace

Key usual_key(KeyCommand command) { return commands[static_cast<std::size_t>(command)].usual; }

std::array<BoundKey, command_count> usual_keys() {
    std::array<BoundKey, command_count> keys;
    for (std::size_t i = 0; i < command_count; ++i) keys[i] = {commands[i].usual};
    return keys;
}

RawInput rebound(const RawInput& raw, const KeyBindings& bindings) {
    RawInput usual = raw;
    const auto clear = [&](Key key) { usual.held[index(key)] = usual.pressed[index(key)] = false; };
    for (std::size_t i = 0; i < command_count; ++i) {
        clear(commands[i].usual);
        clear(bindings.keys[i].key);
    }
    for (std::size_t i = 0; i < command_count; ++i) {
        usual.held[index(commands[i].usual)] = raw.is_held(bindings.keys[i].key);
        usual.pressed[index(commands[i].usual)] = raw.was_pressed(bindings.keys[i].key);
    }
    return usual;
}

KeyCommand bind_key(KeyBindings& bindings, KeyCommand command, const BoundKey& key) {
    BoundKey& mine = bindings.keys[static_cast<std::size_t>(command)];
    const BoundKey before = std::exchange(mine, key);
    if (before.key == key.key) return KeyCommand::count;
    for (std::size_t i = 0; i < command_count; ++i) {
        if (&bindings.keys[i] == &mine || bindings.keys[i].key != key.key) continue;
        bindings.keys[i] = before;
        return static_cast<KeyCommand>(i);
    }
    return KeyCommand::count;
}

std::string key_cap(const BoundKey& key) {
    return key.gives != 0 ? character_words(key.gives) : std::string(name_of(key.key).cap);
}

std::string key_words(const BoundKey& key) {
    if (key.gives != 0) return character_words(key.gives);
    const KeyName& name = name_of(key.key);
    const bool sign = name.cap.size() == 1 && name.words.size() > 1;
    return std::string(name.words) + (sign ? " " + std::string(name.cap) : "");
}

std::string key_bindings_text(const KeyBindings& bindings) {
    std::string text = "{\"sticky\": \"" + std::string(switches[bindings.sticky ? 1 : 0]) +
                       "\", \"thumb_pads\": \"" + std::string(switches[bindings.thumb_pads ? 1 : 0]) + "\"";
    for (std::size_t i = 0; i < command_count; ++i)
        if (bindings.keys[i] != BoundKey{commands[i].usual})
            text += ", \"" + std::string(commands[i].id) + "\": \"" + kept_text(bindings.keys[i]) + "\"";
    return text + "}";
}

KeyBindings read_key_bindings(Fields fields) {
    KeyBindings bindings;
    bindings.sticky = fields.one_of_or("sticky", 0, switches) == 1;
    bindings.thumb_pads = fields.one_of_or("thumb_pads", 1, switches) == 1;
    for (std::size_t i = 0; i < command_count; ++i) {
        if (!fields.has(commands[i].id)) continue;
        const std::string text = fields.text(commands[i].id, longest_key_text);
        if (text.empty()) continue;  // told already
        const BoundKey bound = bound_of(text);
        if (bound.key == Key::count)
            fields.report(commands[i].id, "is \"" + text + "\"", "a key that a command may have");
        else bindings.keys[i] = bound;
    }
    part_those_with_one_key(bindings, fields);
    fields.finish();
    return bindings;
}

}  // namespace slopewise
