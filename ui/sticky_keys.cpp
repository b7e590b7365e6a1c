#include "ui/sticky_keys.h"

#include <algorithm>
#include <string_view>
#include <utility>

#include "ui/input.h"

namespace slopewise {
namespace {

struct Sticky {
    Key key;       // as for_hands leaves it
    Key opposite;  // Key::count: it has none
};

constexpr std::array<Sticky, sticky_count> sticky{{{Key::up, Key::down},
                                                   {Key::down, Key::up},
                                                   {Key::e, Key::d},
                                                   {Key::d, Key::e},
                                                   {Key::u, Key::j},
                                                   {Key::j, Key::u},
                                                   {Key::v, Key::count},
                                                   {Key::a, Key::count}}};

std::size_t index(Key key) { return static_cast<std::size_t>(key); }

bool lets_go_of_all(const RawInput& raw) {
    constexpr std::array<Key, 6> ends{Key::g, Key::p, Key::space, Key::escape, Key::h, Key::c};
    return std::ranges::any_of(ends, [&](Key key) { return raw.was_pressed(key); });
}

}  // namespace

bool HeldSo::any() const { return std::ranges::find(on, true) != on.end(); }

RawInput stuck(HeldSo& held, const RawInput& raw) {
    RawInput now = raw;
    if (lets_go_of_all(raw)) held = {};
    for (std::size_t i = 0; i < sticky_count; ++i) {
        if (!raw.was_pressed(sticky[i].key)) continue;
        bool let_go = std::exchange(held.on[i], false);
        for (std::size_t j = 0; j < sticky_count; ++j)
            if (sticky[j].key == sticky[i].opposite) let_go |= std::exchange(held.on[j], false);
        if (let_go) now.pressed[index(sticky[i].key)] = false;
        else held.on[i] = true;
    }
    for (std::size_t i = 0; i < sticky_count; ++i) now.held[index(sticky[i].key)] = held.on[i];
    return now;
}

void held_words(const HeldSo& held, bool up_key_pushes, std::string& words) {
    const std::array<std::string_view, sticky_count> names{up_key_pushes ? "nose down" : "nose up",
                                                           up_key_pushes ? "nose up" : "nose down",
                                                           "more power",
                                                           "less power",
                                                           "trim nose up",
                                                           "trim nose down",
                                                           "look in",
                                                           "path help"};
    words.clear();
    for (std::size_t i = 0; i < sticky_count; ++i) {
        if (!held.on[i]) continue;
        words.append(words.empty() ? "Held: " : ", ").append(names[i]);
    }
}

}  // namespace slopewise
