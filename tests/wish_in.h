// The wish in an action, when it is one of the kind asked for.
#pragma once

#include <type_traits>
#include <variant>

#include "ui/action.h"

namespace slopewise {

template <class Wanted, class... Wishes>
const Wanted* wish_of(const std::variant<Wishes...>& subject) {
    if constexpr ((std::is_same_v<Wanted, Wishes> || ...)) return std::get_if<Wanted>(&subject);
    else return nullptr;
}

// Null: it is another.
template <class Wanted>
const Wanted* wish_in(const Action& action) {
    return std::visit([](const auto& subject) { return wish_of<Wanted>(subject); }, action);
}

}  // namespace slopewise
