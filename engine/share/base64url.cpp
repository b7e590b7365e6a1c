#include "share/base64url.h"

#include <cstdint>

namespace slopewise {
namespace {

constexpr std::string_view alphabet = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";

}  // namespace

std::string base64url(std::string_view bytes) {
    std::string letters;
    letters.reserve((4 * bytes.size() + 2) / 3);
    std::uint32_t waiting = 0;  // bits not yet written, and how many
    int bits = 0;
    for (const char byte : bytes) {
        waiting = (waiting << 8) | static_cast<unsigned char>(byte);
        for (bits += 8; bits >= 6; bits -= 6) letters += alphabet[(waiting >> (bits - 6)) & 63u];
    }
    if (bits > 0) letters += alphabet[(waiting << (6 - bits)) & 63u];
    return letters;
}

std::optional<std::string> bytes_of_base64url(std::string_view letters) {
    if (letters.size() % 4 == 1) return std::nullopt;
    std::string bytes;
    bytes.reserve(3 * letters.size() / 4);
    std::uint32_t waiting = 0;
    int bits = 0;
    for (const char letter : letters) {
        const std::size_t value = alphabet.find(letter);
        if (value == std::string_view::npos) return std::nullopt;
        waiting = (waiting << 6) | static_cast<std::uint32_t>(value);
        bits += 6;
        if (bits < 8) continue;
        bits -= 8;
        bytes += static_cast<char>((waiting >> bits) & 0xFFu);
    }
    if ((waiting & ((1u << bits) - 1u)) != 0) return std::nullopt;
    return bytes;
}

}  // namespace slopewise
