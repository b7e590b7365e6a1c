#include "data/log_lines.h"

#include <algorithm>
#include <iterator>

namespace slopewise {

std::string newest_lines(std::span<const std::string> lines, std::size_t most_bytes) {
    std::size_t bytes = 0;
    auto first = lines.end();
    while (first != lines.begin() && bytes + std::prev(first)->size() <= most_bytes)
        bytes += (--first)->size();
    std::string text;
    for (; first != lines.end(); ++first) text += *first;
    return text;
}

std::vector<std::string_view> log_lines(std::string_view text, std::size_t most_bytes) {
    if (text.size() > most_bytes) {
        text.remove_prefix(text.size() - most_bytes);
        text.remove_prefix(std::min(text.find('\n'), text.size()));  // the rest of a line that was cut
    }
    std::vector<std::string_view> lines;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find('\n'), text.size());
        lines.push_back(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return lines;
}

}  // namespace slopewise
