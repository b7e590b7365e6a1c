#include <cstddef>

#include "ui/controller.h"

namespace slopewise {
namespace {

// How many bytes the letter at the front of `text` has as UTF-8; 0 when it is none that can be shown. (RFC
// 3629, table in section 4; of its rules against needless length only the first bytes C0 and C1.)
std::size_t letter_bytes(std::string_view text) {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const unsigned char first = byte(0);
    const std::size_t bytes = first < 0x80                    ? 1
                              : first >= 0xC2 && first < 0xE0 ? 2
                              : first >= 0xE0 && first < 0xF0 ? 3
                              : first >= 0xF0 && first < 0xF5 ? 4
                                                              : 0;
    if (bytes == 0 || bytes > text.size() || first < 0x20 || first == 0x7F) return 0;
    for (std::size_t i = 1; i < bytes; ++i)
        if ((byte(i) & 0xC0u) != 0x80u) return 0;
    if (first == 0xE0 && byte(1) < 0xA0) return 0;
    if (first == 0xED && byte(1) >= 0xA0) return 0;
    if (first == 0xF0 && byte(1) < 0x90) return 0;
    if (first == 0xF4 && byte(1) >= 0x90) return 0;
    if (first == 0xC2 && byte(1) < 0xA0) return 0;  // control characters
    return bytes;
}

}  // namespace

ControllerName controller_name(std::string_view given) {
    ControllerName name{};
    std::size_t used = 0;
    while (!given.empty()) {
        const std::size_t bytes = letter_bytes(given);
        if (used + bytes >= name.size()) break;
        const bool blank = bytes == 0 || given.front() == ' ';
        if (blank && used > 0 && name[used - 1] != ' ') name[used++] = ' ';
        for (std::size_t i = 0; i < bytes && !blank; ++i) name[used++] = given[i];
        given.remove_prefix(bytes == 0 ? 1 : bytes);
    }
    if (used == name.size()) name[--used] = '\0';
    while (used > 0 && name[used - 1] == ' ') name[--used] = '\0';
    return used > 0 ? name : controller_name("Controller");
}

}  // namespace slopewise
