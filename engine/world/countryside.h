// The kind of country around a runway, and the seed by which it is laid out: the same for everyone.
#pragma once

#include <array>
#include <cstdint>
#include <string_view>

namespace slopewise {

struct Countryside {
    enum class Kind { farmland, woodland, coast };

    Kind kind = Kind::farmland;
    std::uint64_t seed = 1;
};

// In the order of Countryside::Kind.
inline constexpr std::array<std::string_view, 3> countryside_names{"farmland", "woodland", "coast"};

}  // namespace slopewise
