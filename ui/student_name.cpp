#include "ui/student_name.h"

namespace slopewise {
namespace {

// Every letter of UTF-8 has one byte that does not continue another.
bool begins_letter(char byte) { return (static_cast<unsigned char>(byte) & 0xC0u) != 0x80u; }

}  // namespace

std::string tidy_student(std::string_view name) {
    std::string tidy;
    std::size_t letters = 0;
    for (char byte : name) {
        const auto code = static_cast<unsigned char>(byte);
        if (code < 0x20 || code == 0x7F) byte = ' ';
        if (byte == ' ' && (tidy.empty() || tidy.back() == ' ')) continue;
        if (begins_letter(byte) && ++letters > most_student_letters) break;
        tidy += byte;
    }
    while (!tidy.empty() && tidy.back() == ' ') tidy.pop_back();
    return tidy;
}

std::string student_words(std::string_view name) { return name.empty() ? "No name" : std::string(name); }

}  // namespace slopewise
