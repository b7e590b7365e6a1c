// What tells attempts apart, on any machine: when it began, and a number drawn at random, since two tabs or
// two machines may begin in the same millisecond.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

namespace slopewise {

// "1795654559123-7f3a09bc": sorts by time. `unix_ms` is from 0 to the year 2286.
std::string attempt_id(std::int64_t unix_ms, std::uint32_t random);

bool is_attempt_id(std::string_view text);
inline constexpr const char* attempt_id_words = "13 digits, a hyphen, 8 hexadecimal digits";

}  // namespace slopewise
