#include "logbook/attempt_id.h"

#include <algorithm>
#include <cstdio>

namespace slopewise {
namespace {

bool is_digit(char c) { return c >= '0' && c <= '9'; }
bool is_hex(char c) { return is_digit(c) || (c >= 'a' && c <= 'f'); }

}  // namespace

std::string attempt_id(std::int64_t unix_ms, std::uint32_t random) {
    char text[40];
    std::snprintf(text, sizeof text, "%013lld-%08x", static_cast<long long>(unix_ms), random);
    return text;
}

bool is_attempt_id(std::string_view text) {
    return text.size() == 22 && text[13] == '-' && std::ranges::all_of(text.substr(0, 13), is_digit) &&
           std::ranges::all_of(text.substr(14), is_hex);
}

}  // namespace slopewise
