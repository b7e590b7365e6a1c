#include "base/result.h"

namespace slopewise {

namespace {

constexpr std::size_t most_words = 300;

// What a file holds may be long; what is told of it is read by a person. Never cut within a letter of UTF-8.
std::string cut(const std::string& words) {
    if (words.size() <= most_words) return words;
    std::size_t end = most_words;
    while (end > 0 && (static_cast<unsigned char>(words[end]) & 0xC0u) == 0x80u) --end;
    return words.substr(0, end) + "...";
}

}  // namespace

std::string to_text(const Problem& problem) {
    std::string text = problem.file;
    if (problem.line > 0) text += ":" + std::to_string(problem.line);
    text += ": ";
    if (!problem.path.empty()) text += problem.path + " ";
    text += cut(problem.what);
    if (!problem.allowed.empty()) text += "; allowed: " + problem.allowed;
    return text;
}

}  // namespace slopewise
