#include "share/unseen.h"

#include <cstdint>
#include <string_view>

namespace slopewise {
namespace {

constexpr std::size_t most_told = 20;  // more of the same help nobody

// The next character of UTF-8 that the JSON reader has found to be well formed; moves `at` past it.
std::uint32_t next_character(std::string_view text, std::size_t& at) {
    const auto byte = [&](std::size_t i) {
        return static_cast<std::uint32_t>(static_cast<unsigned char>(text[i]));
    };
    const std::uint32_t first = byte(at++);
    if (first < 0x80u) return first;
    std::uint32_t character = first < 0xE0u ? first & 0x1Fu : (first < 0xF0u ? first & 0x0Fu : first & 0x07u);
    while (at < text.size() && (byte(at) & 0xC0u) == 0x80u)
        character = (character << 6) | (byte(at++) & 0x3Fu);
    return character;
}

// Control characters, and those that are not seen or change the direction of reading (Unicode, general
// categories Cc, Cf, Zl and Zp; the list from memory).
bool is_unseen(std::uint32_t c) {
    return c < 0x20u || (c >= 0x7Fu && c <= 0x9Fu) || c == 0xADu || c == 0x61Cu ||
           (c >= 0x200Bu && c <= 0x200Fu) || (c >= 0x2028u && c <= 0x202Eu) ||
           (c >= 0x2060u && c <= 0x206Fu) || c == 0xFEFFu || (c >= 0xFFF9u && c <= 0xFFFBu) ||
           (c >= 0xE0000u && c <= 0xE007Fu);
}

bool has_unseen(std::string_view text) {
    for (std::size_t at = 0; at < text.size();)
        if (is_unseen(next_character(text, at))) return true;
    return false;
}

}  // namespace

void find_unseen(const JsonNode& node, const std::string& path, const std::string& from,
                 std::vector<Problem>& problems) {
    if (problems.size() >= most_told) return;
    if (has_unseen(node.text))
        problems.push_back(
            {from, node.line, path, "has characters that cannot be seen", "letters and signs"});
    for (std::size_t i = 0; i < node.items.size(); ++i)
        find_unseen(node.items[i], path + "/" + std::to_string(i), from, problems);
    for (const auto& [name, value] : node.members)
        find_unseen(value, path + "/" + (has_unseen(name) ? "?" : name), from, problems);
}

}  // namespace slopewise
